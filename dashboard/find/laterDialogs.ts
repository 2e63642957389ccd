/** The dialogues of a find that are fetched when one is opened. */
export { ShareDialog } from "../share/ShareDialog.tsx";
export { PrintDialog } from "../sheets/PrintDialog.tsx";
