/** The panels of a find that are fetched after its first sight. */
export { WorkBegun } from "../begun/WorkBegun.tsx";
export { MovesPanel } from "../unknown/MovesPanel.tsx";
export { UnseenPanel } from "../unknown/UnseenPanel.tsx";

import "../style/unknown.css";
