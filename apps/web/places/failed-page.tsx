import { Foot } from "../parts/foot.tsx";
import { Head } from "../parts/head.tsx";
import { PageTitle } from "../parts/page-title.tsx";

/** A fault of the program itself: says that nothing is lost and what to send to whoever mends it. */
export function FailedPage({ error }: { readonly error: unknown }) {
  const told = error instanceof Error ? error.message : String(error);
  return (
    <div className="sheet">
      <Head />
      <main id="main" className="stack">
        <div className="page-head">
          <PageTitle tab="This page broke">This page broke</PageTitle>
          <p>
            That is a fault in Hallful and not in what you entered. What was saved is on the server, and what
            was not is kept on this device.
          </p>
        </div>
        <p className="row">
          <button type="button" className="button button-main" onClick={() => location.reload()}>
            Load the page again
          </button>
        </p>
        <p className="small soft">If it breaks again, this is what to report: {told}</p>
      </main>
      <Foot />
    </div>
  );
}
