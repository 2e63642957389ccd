import { exports } from "cloudflare:workers";

/** Asks the Worker as deployed. */
export function ask(path: string, init?: RequestInit): Promise<Response> {
  return exports.default.fetch(`http://spokeworth.test${path}`, init);
}

/** Sends a value to the Worker as JSON. */
export function post(path: string, body: unknown): Promise<Response> {
  return ask(path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
  });
}
