import { COPIED, NOT_COPIED } from "../words/copied.ts";
/**
 * Puts a text on the clipboard; where the browser refuses, selects it in its field, so that one key does the rest.
 * @returns what happened, in words for the screen
 */
export async function copyText(text: string, field: HTMLTextAreaElement | null): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return COPIED;
  } catch {
    field?.focus();
    field?.select();
    return NOT_COPIED;
  }
}
