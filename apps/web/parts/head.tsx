import { Link } from "@tanstack/react-router";
import type { ReactNode } from "react";

/** The head of the sheet: the name, the places where there are any, and what else belongs at the top. */
export function Head({ children }: { readonly children?: ReactNode }) {
  return (
    <>
      <a className="skip" href="#main">
        Skip to the page
      </a>
      <header className="head">
        <Link to="/" className="head-name">
          Hall<span>ful</span>
        </Link>
        {children}
      </header>
    </>
  );
}
