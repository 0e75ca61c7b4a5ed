import { PageTitle } from "../parts/page-title.tsx";

export function HallsPage() {
  return (
    <div className="page-head">
      <PageTitle tab="Halls">Halls</PageTitle>
    </div>
  );
}
