/**
 * Puts a text on the clipboard; where the browser refuses, selects it in its field, so that one key does the rest.
 * @returns what happened, in words for the screen
 */
export async function copyText(text: string, field: HTMLTextAreaElement | null): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return "Copied.";
  } catch {
    field?.focus();
    field?.select();
    return "This browser does not let the page copy. The text is selected: copy it with the keyboard or the menu.";
  }
}
