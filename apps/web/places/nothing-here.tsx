import { Link } from "@tanstack/react-router";
import { PageTitle } from "../parts/page-title.tsx";

type Props = { readonly what: "hall" | "class"; readonly practice: string };

/** A hall or a class that neither the server nor this device has. */
export function NothingHere({ what, practice }: Props) {
  const to = what === "hall" ? "/practice/$practice/halls" : "/practice/$practice/classes";
  return (
    <div className="page-head">
      <PageTitle tab={`No such ${what}`}>There is no such {what} here</PageTitle>
      <p>It may have been deleted, here or in another window.</p>
      <p>
        <Link to={to} params={{ practice }}>
          {what === "hall" ? "All halls" : "All classes"}
        </Link>
      </p>
    </div>
  );
}
