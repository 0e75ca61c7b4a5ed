import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Outlet,
  redirect,
} from "@tanstack/react-router";
import { FailedPage } from "./places/failed-page.tsx";
import { NotFoundPage } from "./places/not-found-page.tsx";
import { PracticeShell } from "./places/practice-shell.tsx";
import { StartPage } from "./places/start-page.tsx";

const root = createRootRoute({
  component: Outlet,
  notFoundComponent: NotFoundPage,
  errorComponent: ({ error }) => <FailedPage error={error} />,
});

const start = createRoute({ getParentRoute: () => root, path: "/", component: StartPage });

const practice = createRoute({
  getParentRoute: () => root,
  path: "/practice/$practice",
  component: PracticeShell,
});

const practiceStart = createRoute({
  getParentRoute: () => practice,
  path: "/",
  beforeLoad: ({ params }) => {
    throw redirect({ to: "/practice/$practice/classes", params, replace: true });
  },
});

const classes = createRoute({
  getParentRoute: () => practice,
  path: "/classes",
  component: lazyRouteComponent(() => import("./places/classes-page.tsx"), "ClassesPage"),
});

const oneClass = createRoute({
  getParentRoute: () => practice,
  path: "/classes/$id",
  component: lazyRouteComponent(() => import("./places/class-page.tsx"), "ClassPage"),
});

const halls = createRoute({
  getParentRoute: () => practice,
  path: "/halls",
  component: lazyRouteComponent(() => import("./places/halls-page.tsx"), "HallsPage"),
});

const oneHall = createRoute({
  getParentRoute: () => practice,
  path: "/halls/$id",
  component: lazyRouteComponent(() => import("./places/hall-page.tsx"), "HallPage"),
});

const compare = createRoute({
  getParentRoute: () => practice,
  path: "/compare",
  component: lazyRouteComponent(() => import("./places/compare-page.tsx"), "ComparePage"),
});

const compareFor = createRoute({
  getParentRoute: () => practice,
  path: "/compare/$id",
  component: lazyRouteComponent(() => import("./places/compare-page.tsx"), "ComparePage"),
});

const startPage = lazyRouteComponent(() => import("./measuring/measure-start-page.tsx"), "MeasureStartPage");

const measure = createRoute({ getParentRoute: () => practice, path: "/measure", component: startPage });

const measureHall = createRoute({
  getParentRoute: () => practice,
  path: "/halls/$id/measure",
  component: startPage,
});

const measuring = createRoute({
  getParentRoute: () => practice,
  path: "/measure/$id",
  component: lazyRouteComponent(() => import("./measuring/measuring-page.tsx"), "MeasuringPage"),
});

const hallSheet = createRoute({
  getParentRoute: () => practice,
  path: "/halls/$id/hall-sheet",
  component: lazyRouteComponent(() => import("./papers/hall-sheet-page.tsx"), "HallSheetPage"),
});

const classHallSheet = createRoute({
  getParentRoute: () => practice,
  path: "/classes/$id/hall-sheet",
  component: lazyRouteComponent(() => import("./papers/hall-sheet-page.tsx"), "ClassHallSheetPage"),
});

const people = createRoute({
  getParentRoute: () => practice,
  path: "/people",
  component: lazyRouteComponent(() => import("./coming/coming-page.tsx"), "ComingPage"),
});

const week = createRoute({
  getParentRoute: () => practice,
  path: "/week",
  component: lazyRouteComponent(() => import("./week/week-page.tsx"), "WeekPage"),
});

const tree = root.addChildren([
  start,
  practice.addChildren([
    practiceStart,
    classes,
    oneClass,
    halls,
    oneHall,
    compare,
    compareFor,
    measure,
    measureHall,
    measuring,
    hallSheet,
    classHallSheet,
    people,
    week,
  ]),
]);

/** Every address of the teacher's screens. */
export function routerOver() {
  return createRouter({ routeTree: tree, scrollRestoration: true });
}

declare module "@tanstack/react-router" {
  interface Register {
    router: ReturnType<typeof routerOver>;
  }
}
