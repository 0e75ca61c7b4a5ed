import { Link, useLocation } from "@tanstack/react-router";

/** The six places, named for what she is doing, and the addresses that belong to each besides its own. */
const places = [
  { to: "/practice/$practice/tonight", label: "Tonight", also: ["sessions"] },
  { to: "/practice/$practice/classes", label: "Classes", also: ["compare"] },
  { to: "/practice/$practice/halls", label: "Halls", also: ["measure"] },
  { to: "/practice/$practice/week", label: "Week and year", also: ["year"] },
  { to: "/practice/$practice/people", label: "People", also: ["accidents"] },
  { to: "/practice/$practice/money", label: "Money", also: ["books"] },
] as const;

/** The way between the places; the one she is in is marked, also on a page that only belongs to it. */
export function PlaceLinks({ practice }: { readonly practice: string }) {
  const path = useLocation({ select: ({ pathname }) => pathname });
  const isIn = (also: readonly string[]) =>
    also.some((part) => path.startsWith(`/practice/${practice}/${part}`));
  return (
    <nav className="head-places" aria-label="Places">
      {places.map(({ to, label, also }) => (
        <Link key={to} to={to} params={{ practice }} {...(isIn(also) ? { "aria-current": "true" } : {})}>
          {label}
        </Link>
      ))}
    </nav>
  );
}
