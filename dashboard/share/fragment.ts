import { fromBase64Url, toBase64Url } from "./base64url.ts";
import { type SharedFind, sharedFindIn } from "./sharedFind.ts";
import { deflated, inflated } from "./zlib.ts";

/** The first byte of a link's contents: raised when an older page could no longer read them. */
const VERSION = 1;
/** Far beyond a find with every check answered (about 5 kB). */
const MOST_BYTES = 100_000;
/** What a message may have put behind a link. */
const TRAILING = /[.,;:?)\]>'"\u2019\u201d\u00bb]+$/;

/** What came out of a link, or what is wrong with it. */
export type ReadLink =
  | { readonly shared: SharedFind /** The find as it stood in the link. */; readonly raw: unknown }
  | { readonly wrong: "empty" | "broken" | "newer" | "foreign" };

/** A find as the fragment of an address, "#" left out: base64url of a version byte and the zlib stream of its JSON. */
export async function fragmentOf(find: SharedFind): Promise<string> {
  return toBase64Url(new Uint8Array([VERSION, ...(await deflated(JSON.stringify(find)))]));
}

/** Reads what `fragmentOf` wrote, with or without "#". */
export async function readFragment(fragment: string): Promise<ReadLink> {
  const text = fragment.replace(/^#/, "").replace(TRAILING, "");
  if (text === "") return { wrong: "empty" };
  const bytes = fromBase64Url(text);
  if (bytes === null) return { wrong: "broken" };
  const [version = 0] = bytes;
  if (version > VERSION && version < 32) return { wrong: "newer" };
  if (version !== VERSION) return { wrong: "foreign" };
  const json = await inflated(bytes.slice(1), MOST_BYTES);
  if (json === null) return { wrong: "broken" };
  const raw = parsed(json);
  const shared = sharedFindIn(raw);
  return shared === null ? { wrong: "foreign" } : { shared, raw };
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}
