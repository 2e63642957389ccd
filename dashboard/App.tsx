import { FindsPage } from "./pages/FindsPage.tsx";
import { Heading } from "./parts/Heading.tsx";
import { Later } from "./parts/Later.tsx";
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
  const here = route.value;
  switch (here.page) {
    case "finds":
      return <FindsPage />;
    case "find":
      return <Later title={PLACE_NAMES.find} load={findPage} />;
    case "listing":
      return <Later title={PLACE_NAMES.listing} load={listingPage} />;
    case "stand":
      return <Later title={PLACE_NAMES.stand} load={standPage} />;
    case "describe":
      return <Later title={PLACE_NAMES.describe} load={describePage} />;
    case "spot":
      return <Later title={PLACE_NAMES.spot} load={spotPage} />;
    case "prices":
      return <Later title={PLACE_NAMES.prices} load={pricesPage} />;
    case "compare":
      return <Later title={PLACE_NAMES.compare} load={comparePage} />;
    case "together":
      return <Later title={PLACE_NAMES.together} load={togetherPage} />;
    case "selling":
      return <Later title={PLACE_NAMES.selling} load={sellingPage} />;
    case "shared":
      return <Later title={PLACE_NAMES.shared} load={sharedPage} />;
    case "sheets":
      return <Later title={PLACE_NAMES.sheets} load={sheetsPage} />;
    case "nowhere":
      return <Nowhere />;
  }
}

const findPage = () => import("./pages/FindPage.tsx").then(({ FindPage }) => FindPage);
const listingPage = () => import("./pages/ListingPage.tsx").then(({ ListingPage }) => ListingPage);
const standPage = () => import("./pages/StandPage.tsx").then(({ StandPage }) => StandPage);
const describePage = () => import("./pages/DescribePage.tsx").then(({ DescribePage }) => DescribePage);
const spotPage = () => import("./pages/SpotPage.tsx").then(({ SpotPage }) => SpotPage);
const pricesPage = () => import("./pages/PricesPage.tsx").then(({ PricesPage }) => PricesPage);
const comparePage = () => import("./pages/ComparePage.tsx").then(({ ComparePage }) => ComparePage);
const togetherPage = () => import("./pages/TogetherPage.tsx").then(({ TogetherPage }) => TogetherPage);
const sellingPage = () => import("./pages/SellingPage.tsx").then(({ SellingPage }) => SellingPage);
const sharedPage = () => import("./pages/SharedPage.tsx").then(({ SharedPage }) => SharedPage);
const sheetsPage = () => import("./pages/SheetsPage.tsx").then(({ SheetsPage }) => SheetsPage);

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
