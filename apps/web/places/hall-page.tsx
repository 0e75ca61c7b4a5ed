import { PageTitle } from "../parts/page-title.tsx";

export function HallPage() {
  return (
    <div className="page-head">
      <PageTitle tab="Hall">Hall</PageTitle>
    </div>
  );
}
