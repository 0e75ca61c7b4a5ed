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
  beforeLoad: async ({ params }) => {
    const { opensTonight } = await import("./tonight/opens-tonight.ts");
    const tonight = await opensTonight(params.practice);
    const to = tonight ? "/practice/$practice/tonight" : "/practice/$practice/classes";
    throw redirect({ to, params, replace: true });
  },
});

const tonight = createRoute({
  getParentRoute: () => practice,
  path: "/tonight",
  component: lazyRouteComponent(() => import("./tonight/tonight-page.tsx"), "TonightPage"),
});

const oneSession = createRoute({
  getParentRoute: () => practice,
  path: "/sessions/$id",
  component: lazyRouteComponent(() => import("./tonight/session-page.tsx"), "SessionPage"),
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

const money = createRoute({
  getParentRoute: () => practice,
  path: "/money",
  component: lazyRouteComponent(() => import("./money/money-page.tsx"), "MoneyPage"),
});

const books = createRoute({
  getParentRoute: () => practice,
  path: "/books",
  component: lazyRouteComponent(() => import("./books/books-page.tsx"), "BooksPage"),
});

const yearEnd = createRoute({
  getParentRoute: () => practice,
  path: "/books/year-end",
  component: lazyRouteComponent(() => import("./books/year-end-page.tsx"), "YearEndPage"),
});

const people = createRoute({
  getParentRoute: () => practice,
  path: "/people",
  component: lazyRouteComponent(() => import("./people/people-page.tsx"), "PeoplePage"),
});

const coming = createRoute({
  getParentRoute: () => practice,
  path: "/people/coming",
  component: lazyRouteComponent(() => import("./coming/coming-page.tsx"), "ComingPage"),
});

const onePerson = createRoute({
  getParentRoute: () => practice,
  path: "/people/$person",
  component: lazyRouteComponent(() => import("./people/person-page.tsx"), "PersonPage"),
});

const keptOfPerson = createRoute({
  getParentRoute: () => practice,
  path: "/people/$person/kept",
  component: lazyRouteComponent(() => import("./people/kept-page.tsx"), "KeptPage"),
});

const week = createRoute({
  getParentRoute: () => practice,
  path: "/week",
  component: lazyRouteComponent(() => import("./week/week-page.tsx"), "WeekPage"),
});

const year = createRoute({
  getParentRoute: () => practice,
  path: "/year",
  component: lazyRouteComponent(() => import("./year/year-page.tsx"), "YearPage"),
});

const wrong = createRoute({
  getParentRoute: () => practice,
  path: "/sessions/$id/wrong",
  component: lazyRouteComponent(() => import("./wrong/wrong-page.tsx"), "WrongPage"),
});

const accidents = createRoute({
  getParentRoute: () => practice,
  path: "/accidents",
  component: lazyRouteComponent(() => import("./wrong/accidents-page.tsx"), "AccidentsPage"),
});

const handover = createRoute({
  getParentRoute: () => practice,
  path: "/sessions/$id/handover",
  component: lazyRouteComponent(() => import("./wrong/handover-page.tsx"), "HandoverPage"),
});

const tree = root.addChildren([
  start,
  practice.addChildren([
    practiceStart,
    tonight,
    oneSession,
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
    wrong,
    accidents,
    handover,
    people,
    coming,
    onePerson,
    keptOfPerson,
    money,
    books,
    yearEnd,
    week,
    year,
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
