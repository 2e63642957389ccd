import "./phone.ts";
import { renderToString } from "preact-render-to-string";
import { version } from "../../package.json";
import { readCatalogue } from "../../worker/tables.ts";
import { App } from "../App.tsx";
import { DEMO_FINDS } from "../finds/demo.ts";
import { stands } from "../firstSight/stands.ts";
import { localApi } from "../local/localApi.ts";
import type { Question } from "../local/question.ts";
import { askingOf, keepAsking } from "../state/finds.ts";
import { loadReference, referenceFault } from "../state/reference.ts";
import { type Route, route, routeOf } from "../state/route.ts";
import { sellingAskingOf } from "../state/selling.ts";
import { setAsking } from "../state/set.ts";

/** A page as somebody sees it who comes for the first time. */
export interface FirstSight {
  readonly path: string;
  readonly page: Route["page"];
  /** What stands in the element `app`. */
  readonly html: string;
}

const PATHS = [
  "/",
  "/describe",
  "/spot",
  "/prices",
  "/sheets",
  "/selling",
  "/compare",
  "/together",
  ...DEMO_FINDS.flatMap(({ id }) => [
    `/finds/${id}`,
    `/finds/${id}/listing`,
    `/finds/${id}/stand`,
    `/selling/${id}`,
  ]),
];

/** Draws every page that stands without anything of the user's own, with the answers of the engine. */
export async function firstSights(): Promise<FirstSight[]> {
  const api = localApi(version, readCatalogue());
  globalThis.fetch = async (path, init) => {
    const { status, body } = await api({ method: init?.method, path, body: init?.body ?? null } as Question);
    return new Response(body, { status });
  };
  await loadReference();
  keepAsking();
  const sights: FirstSight[] = [];
  for (const path of PATHS) {
    route.value = routeOf(path);
    await stands(route.value);
    // Nothing without its answer is ever shown.
    const [fault] = [
      referenceFault,
      setAsking.fault,
      ...DEMO_FINDS.flatMap(({ id }) => [askingOf(id).fault, sellingAskingOf(id).fault]),
    ].flatMap(({ value }) => value ?? []);
    if (fault !== undefined) throw new Error(`${path} was not answered: ${JSON.stringify(fault)}`);
    sights.push({ path, page: route.value.page, html: renderToString(<App />) });
  }
  return sights;
}
