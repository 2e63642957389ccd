import type { Problem } from "./types.ts";

/** A field the API refused: where it stands (RFC 6901) and what to change. */
export interface FieldFault {
  readonly pointer: string;
  readonly message: string;
}

/** Why an answer did not come. */
export type Fault =
  | { readonly kind: "no-signal" }
  | { readonly kind: "refused"; readonly detail: string; readonly fields: readonly FieldFault[] }
  | { readonly kind: "failed"; readonly detail: string };

/** What a failing answer of the API says, whether or not its body is the problem details it should be. */
export async function faultOf(response: Response): Promise<Fault> {
  const problem = await problemIn(response);
  const detail = problem?.detail ?? problem?.title ?? `The service answered ${response.status}.`;
  if (response.status >= 500) return { kind: "failed", detail };
  const fields = (problem?.errors ?? []).map(({ pointer, message, allowed }) => ({
    pointer,
    message: allowed === undefined ? message : withChoices(message, allowed),
  }));
  return { kind: "refused", detail, fields };
}

async function problemIn(response: Response): Promise<Problem | null> {
  try {
    const body: unknown = await response.json();
    return typeof body === "object" && body !== null ? (body as Problem) : null;
  } catch {
    return null;
  }
}

/** Names what would be accepted where the message does not. */
function withChoices(message: string, allowed: readonly unknown[]): string {
  const named = allowed.every((one) => message.includes(String(one)));
  return named ? message : `${message} (${allowed.join(", ")})`;
}

/** The messages for one field: those at its pointer or below it. */
export function messagesAt(fault: Fault | null, pointer: string): readonly string[] {
  if (fault?.kind !== "refused") return [];
  return fault.fields
    .filter((field) => field.pointer === pointer || field.pointer.startsWith(`${pointer}/`))
    .map(({ message }) => message);
}
