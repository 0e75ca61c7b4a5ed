import type { ConsentKind } from "#core/roll";
import { ConsentRow } from "./consent-row.tsx";
import type { PersonAt } from "./person-page.tsx";

const asked: readonly ConsentKind[] = ["news", "photo", "hands-on"];

/** What somebody agreed to: each by itself, dated, and to be taken back. Nothing is taken for agreed. */
export function ConsentsPart(at: PersonAt) {
  return (
    <section className="part" aria-labelledby="agreed">
      <h2 id="agreed">What {at.person.contact.name} agreed to</h2>
      <p>Each is asked by itself and can be answered with no: no class depends on any of them.</p>
      <div>
        {asked.map((to) => (
          <ConsentRow key={to} at={at} to={to} />
        ))}
      </div>
    </section>
  );
}
