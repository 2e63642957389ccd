/** Hands the user a text as a file of CSV. */
export function download(name: string, text: string): void {
  // The mark tells spreadsheets that the file is in UTF-8.
  handOver(name, new Blob(["\ufeff", text], { type: "text/csv;charset=utf-8" }));
}

/** Hands the user a file. */
export function handOver(name: string, file: Blob): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers fetch the address only after the click has ended.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
