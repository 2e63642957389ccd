import { useEffect, useId, useMemo, useRef, useState } from "preact/hooks";
import type { Reference } from "../api/types.ts";
import type { Find } from "../finds/find.ts";
import { copyText } from "../listing/copyText.ts";
import { localDay } from "../ownPrices/days.ts";
import { Dialog } from "../parts/Dialog.tsx";
import { ownFinds } from "../state/finds.ts";
import {
  inIt,
  KEPT_BACK,
  linkLabel,
  messageWords,
  NO_LINK,
  NO_SERVER,
  SHARE_COPY,
  SHARE_SAVE,
  SHARE_SAVED,
  SHARE_SEND,
  SHARE_TITLE,
} from "../words/shareDialog.ts";
import "../style/share.css";
import { saveFinds } from "./findsFile.ts";
import { fragmentOf } from "./fragment.ts";
import { ownFrom, sharedFind } from "./sharedFind.ts";

interface ShareDialogProps {
  readonly find: Find;
  readonly known: Reference;
  readonly onClose: () => void;
}

/** A find as a link to pass on, or as a file; what is in it is said first. */
export function ShareDialog({ find, known, onClose }: ShareDialogProps) {
  const shared = useMemo(() => sharedFind(find, ownFinds.get(find.id)), [find]);
  const [link, setLink] = useState<string | null>(null);
  const [failed, setFailed] = useState(false);
  const [told, setTold] = useState("");
  const area = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  useEffect(() => {
    let gone = false;
    fragmentOf(shared).then(
      (fragment) => !gone && setLink(`${location.origin}/shared#${fragment}`),
      () => !gone && setFailed(true),
    );
    return () => {
      gone = true;
    };
  }, [shared]);

  const copy = async () => setTold(await copyText(link ?? "", area.current));
  const send = async () => {
    try {
      await navigator.share({ title: messageWords(find.name), url: link ?? "" });
    } catch (error) {
      // Whoever changes their mind needs no message.
      if (!(error instanceof DOMException && error.name === "AbortError")) await copy();
    }
  };
  const save = () => {
    saveFinds([ownFrom(shared)], localDay(new Date()));
    setTold(SHARE_SAVED);
  };
  return (
    <Dialog title={SHARE_TITLE} onClose={onClose}>
      <p>{inIt(shared.name, shared.answers, known.currency)}</p>
      <p class="small">
        {KEPT_BACK} {failed ? "" : NO_SERVER}
      </p>
      {failed ? (
        <p class="note">{NO_LINK}</p>
      ) : (
        <div class="field">
          <label for={id}>{linkLabel(link?.length ?? 0)}</label>
          <textarea id={id} ref={area} class="link" rows={3} readOnly value={link ?? ""} />
        </div>
      )}
      <div class="acts">
        {link !== null && "share" in navigator && (
          <button type="button" class="btn" onClick={() => void send()}>
            {SHARE_SEND}
          </button>
        )}
        {link !== null && (
          <button
            type="button"
            class={"share" in navigator ? "btn quiet" : "btn"}
            onClick={() => void copy()}
          >
            {SHARE_COPY}
          </button>
        )}
        <button type="button" class="btn quiet" onClick={save}>
          {SHARE_SAVE}
        </button>
      </div>
      <p class="copied" role="status">
        {told}
      </p>
    </Dialog>
  );
}
