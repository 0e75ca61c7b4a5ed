import { PageTitle } from "../parts/page-title.tsx";

export function ClassPage() {
  return (
    <div className="page-head">
      <PageTitle tab="Class">Class</PageTitle>
    </div>
  );
}
