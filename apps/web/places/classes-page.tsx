import { PageTitle } from "../parts/page-title.tsx";

export function ClassesPage() {
  return (
    <div className="page-head">
      <PageTitle tab="Classes">Classes</PageTitle>
    </div>
  );
}
