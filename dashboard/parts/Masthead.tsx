import { Word } from "../signs/Word.tsx";
import { type Route, route } from "../state/route.ts";
import { MASTHEAD_BELOW, MASTHEAD_MAIN, MASTHEAD_SKIP } from "../words/masthead.ts";
import { PLACE_NAMES } from "../words/placeNames.ts";
import { GoalPill } from "./GoalPill.tsx";
import { StatusLine } from "./StatusLine.tsx";

const PLACES = [
  { page: "finds", href: "/" },
  { page: "spot", href: "/spot" },
  { page: "compare", href: "/compare" },
  { page: "selling", href: "/selling" },
] as const;

/** Pages that lie under one of the places. */
const UNDER: Readonly<Partial<Record<Route["page"], string>>> = {
  find: "finds",
  describe: "finds",
  listing: "finds",
  shared: "finds",
  sheets: "finds",
  stand: "finds",
  together: "compare",
};
const ICONS = { finds: FindsIcon, spot: SpotIcon, compare: CompareIcon, selling: SellingIcon };

function Places() {
  const { page } = route.value;
  return PLACES.map((place) => {
    const here = page === place.page || UNDER[page] === place.page;
    const Icon = ICONS[place.page];
    return (
      <a
        key={place.page}
        href={place.href}
        {...(here ? { "aria-current": page === place.page ? "page" : "true" } : {})}
      >
        <Icon />
        {PLACE_NAMES[place.page]}
      </a>
    );
  });
}

export function Masthead() {
  return (
    <header class="page">
      <a class="skip" href="#main">
        {MASTHEAD_SKIP}
      </a>
      <div class="mast">
        <Word />
        <nav aria-label={MASTHEAD_MAIN}>
          <Places />
          <a href="/prices" {...(route.value.page === "prices" ? { "aria-current": "page" } : {})}>
            {PLACE_NAMES.prices}
          </a>
        </nav>
        <GoalPill />
      </div>
      <StatusLine />
    </header>
  );
}

/** The same places at the thumb on a phone. */
export function Tabs() {
  return (
    <nav class="tabs" aria-label={MASTHEAD_BELOW}>
      <Places />
    </nav>
  );
}

function FindsIcon() {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d="M4 6h10M4 12h16M4 18h7" />
      <circle cx="17" cy="6" r="2" />
      <circle cx="14" cy="18" r="2" />
    </svg>
  );
}

function SpotIcon() {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <circle cx="10.5" cy="10.5" r="6.5" />
      <path d="M15.500 15.500L20 20M10.500 4v13M4 10.500h13" />
    </svg>
  );
}

function CompareIcon() {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d="M5 4v16M12 4v16M19 4v16" />
      <path d="M3 14h4M10 8h4M17 11h4" stroke-width="3.200" />
    </svg>
  );
}

function SellingIcon() {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d="M3 12V4h8l10 10-8 8z" />
      <circle cx="7.500" cy="8.500" r="1.300" />
    </svg>
  );
}
