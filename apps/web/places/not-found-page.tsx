import { Link } from "@tanstack/react-router";
import { Foot } from "../parts/foot.tsx";
import { Head } from "../parts/head.tsx";
import { PageTitle } from "../parts/page-title.tsx";

/** An address at which nothing stands. */
export function NotFoundPage() {
  return (
    <div className="sheet">
      <Head />
      <main id="main" className="stack">
        <div className="page-head">
          <PageTitle tab="Nothing at this address">Nothing stands at this address</PageTitle>
          <p>
            The address may be mistyped, or the hall or class it led to has been deleted. Nothing of yours is
            lost by coming here.
          </p>
        </div>
        <p>
          <Link to="/">Go to your practices</Link>
        </p>
      </main>
      <Foot />
    </div>
  );
}
