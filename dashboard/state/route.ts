import { signal } from "@preact/signals";

/** Where in the dashboard we are. */
export type Route =
  | { readonly page: "finds" }
  | { readonly page: "find"; readonly id: string }
  | { readonly page: "listing"; readonly id: string }
  | { readonly page: "stand"; readonly id: string }
  | { readonly page: "describe"; readonly id: string | null }
  | { readonly page: "spot"; readonly id: string | null }
  | { readonly page: "prices" }
  | { readonly page: "compare" }
  | { readonly page: "together" }
  | { readonly page: "selling"; readonly id: string | null }
  | { readonly page: "shared" }
  | { readonly page: "sheets" }
  | { readonly page: "nowhere" };

/** Pages that no id follows. */
const PLACES = ["prices", "compare", "together", "shared", "sheets"] as const;

/**
 * Reads a path: "/", "/finds/<id>", "/finds/<id>/listing", "/finds/<id>/stand", "/describe", "/describe/<id>", "/spot", "/spot/<id>", "/prices",
 * "/compare", "/together", "/shared", "/sheets", "/selling", "/selling/<id>".
 */
export function routeOf(path: string): Route {
  const [first, second, ...more] = path.split("/").filter((part) => part !== "");
  if (first === undefined) return { page: "finds" };
  if (first === "finds" && second !== undefined && more.join("/") === "listing")
    return { page: "listing", id: decoded(second) };
  if (first === "finds" && second !== undefined && more.join("/") === "stand")
    return { page: "stand", id: decoded(second) };
  if (more.length > 0) return { page: "nowhere" };
  if (first === "finds" && second === undefined) return { page: "finds" };
  if (first === "finds" && second !== undefined) return { page: "find", id: decoded(second) };
  const place = PLACES.find((name) => name === first);
  if (second === undefined && place !== undefined) return { page: place };
  if (first === "describe" || first === "spot" || first === "selling")
    return { page: first, id: second === undefined ? null : decoded(second) };
  return { page: "nowhere" };
}

/** The address of a find on the stand, and of a check's card there. */
export function standAt(id: string, check?: string): string {
  return `/finds/${encodeURIComponent(id)}/stand${check === undefined ? "" : `#check-${check}`}`;
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export const route = signal<Route>({ page: "finds" });
/** Set by a move inside the dashboard: the new page's heading then takes the focus. */
export const moved = signal(false);

/** Follows the address bar, and links inside the dashboard, without loading the page anew. */
export function followAddress(): void {
  const read = () => {
    route.value = routeOf(location.pathname);
  };
  read();
  addEventListener("popstate", () => {
    moved.value = true;
    read();
  });
  document.addEventListener("click", (event) => {
    const link = (event.target as Element | null)?.closest?.("a[href]");
    if (!(link instanceof HTMLAnchorElement) || !isPlain(event) || link.origin !== location.origin) return;
    if (link.getAttribute("href")?.startsWith("#")) return;
    event.preventDefault();
    go(link.pathname + link.hash);
  });
}

function isPlain(event: MouseEvent): boolean {
  return (
    !event.defaultPrevented &&
    event.button === 0 &&
    !event.metaKey &&
    !event.ctrlKey &&
    !event.shiftKey &&
    !event.altKey
  );
}

/**
 * Moves to another page of the dashboard.
 * @param path with a fragment where the page opens at a place of its own
 */
export function go(path: string): void {
  history.pushState(null, "", path);
  moved.value = true;
  route.value = routeOf(path.replace(/#.*$/, ""));
  scrollTo(0, 0);
}

/** Gives the page in sight another address, without a step in the history. */
export function rename(path: string): void {
  history.replaceState(null, "", path);
  route.value = routeOf(path);
}
