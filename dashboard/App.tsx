import { FindsPage } from "./pages/FindsPage.tsx";
import { Heading } from "./parts/Heading.tsx";
import { fetchLater, Later, type LaterProps } from "./parts/Later.tsx";
import { Masthead, Tabs } from "./parts/Masthead.tsx";
import { Trouble } from "./parts/Trouble.tsx";
import { WorkedOut } from "./parts/WorkedOut.tsx";
import { askingOf, findsShown } from "./state/finds.ts";
import { loadReference, reference, referenceFault } from "./state/reference.ts";
import { type Route, route } from "./state/route.ts";
import { NO_PAGE_NO_ANSWER, NO_PAGE_NO_CATALOGUE, NO_PAGE_NOWHERE, NO_PAGE_TITLE } from "./words/noPage.ts";
import { PLACE_NAMES, TO_THE_FINDS } from "./words/placeNames.ts";

export function App() {
  const here = route.value;
  return (
    <div class={hasTabs(here) ? "shell has-tabs" : "shell"}>
      <Masthead />
      {referenceFault.value !== null && reference.value === null ? <NoReference /> : <Page key={key()} />}
      {hasFinds(here) && <WorkedOut askings={findsShown.value.map(({ id }) => askingOf(id))} />}
      {hasTabs(here) && <Tabs />}
    </div>
  );
}

/** Pages without an answer, and those that say themselves where theirs was worked out. */
const NOT_OF_FINDS: readonly Route["page"][] = [
  "nowhere",
  "spot",
  "prices",
  "selling",
  "sheets",
  "together",
  "shared",
];

/** Whether a page shows the answers about finds kept here, and nothing but them. */
function hasFinds({ page }: Route): boolean {
  return !NOT_OF_FINDS.includes(page) && reference.value !== null;
}

/** Where a find is looked at, its verdict stands at the foot in place of the tabs. */
function hasTabs(here: Route): boolean {
  return here.page !== "describe" && !(here.page === "spot" && here.id !== null);
}

/** A page is made anew when another find is opened, but not when a new description gets its address. */
function key(): string {
  const here = route.value;
  return here.page === "find" || here.page === "listing" || here.page === "selling"
    ? `${here.page} ${here.id}`
    : here.page;
}

function Page() {
  const { page } = route.value;
  if (page === "finds") return <FindsPage />;
  return page === "nowhere" ? <Nowhere /> : <Later {...LATER[page]} />;
}

/** Every page but the first, by its place: its name while it does not come, and its script. */
const LATER: Readonly<Record<Exclude<Route["page"], "finds" | "nowhere">, LaterProps>> = {
  find: {
    title: PLACE_NAMES.find,
    load: () => import("./pages/FindPage.tsx").then(({ FindPage }) => FindPage),
  },
  listing: {
    title: PLACE_NAMES.listing,
    load: () => import("./pages/ListingPage.tsx").then(({ ListingPage }) => ListingPage),
  },
  stand: {
    title: PLACE_NAMES.stand,
    load: () => import("./pages/StandPage.tsx").then(({ StandPage }) => StandPage),
  },
  describe: {
    title: PLACE_NAMES.describe,
    load: () => import("./pages/DescribePage.tsx").then(({ DescribePage }) => DescribePage),
  },
  spot: {
    title: PLACE_NAMES.spot,
    load: () => import("./pages/SpotPage.tsx").then(({ SpotPage }) => SpotPage),
  },
  prices: {
    title: PLACE_NAMES.prices,
    load: () => import("./pages/PricesPage.tsx").then(({ PricesPage }) => PricesPage),
  },
  compare: {
    title: PLACE_NAMES.compare,
    load: () => import("./pages/ComparePage.tsx").then(({ ComparePage }) => ComparePage),
  },
  together: {
    title: PLACE_NAMES.together,
    load: () => import("./pages/TogetherPage.tsx").then(({ TogetherPage }) => TogetherPage),
  },
  selling: {
    title: PLACE_NAMES.selling,
    load: () => import("./pages/SellingPage.tsx").then(({ SellingPage }) => SellingPage),
  },
  shared: {
    title: PLACE_NAMES.shared,
    load: () => import("./pages/SharedPage.tsx").then(({ SharedPage }) => SharedPage),
  },
  sheets: {
    title: PLACE_NAMES.sheets,
    load: () => import("./pages/SheetsPage.tsx").then(({ SheetsPage }) => SheetsPage),
  },
};

/** Fetches the script of the page at an address, so that it is drawn at once. */
export async function fetchPage({ page }: Route): Promise<void> {
  if (page !== "finds" && page !== "nowhere") await fetchLater(LATER[page].load);
}

function Nowhere() {
  return (
    <main class="page" id="main">
      <Heading title={NO_PAGE_TITLE}>{NO_PAGE_NOWHERE}</Heading>
      <p>
        <a href="/">{TO_THE_FINDS}</a>
      </p>
    </main>
  );
}

/** Without the catalogue there is neither a form nor a name for anything. */
function NoReference() {
  const fault = referenceFault.value;
  return (
    <main class="page" id="main">
      <Heading title={NO_PAGE_NO_ANSWER}>{NO_PAGE_NO_CATALOGUE}</Heading>
      {fault !== null && <Trouble fault={fault} again={() => void loadReference()} />}
    </main>
  );
}
