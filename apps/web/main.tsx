import "@fontsource/atkinson-hyperlegible-next/400.css";
import "@fontsource/atkinson-hyperlegible-next/700.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/sheet.css";
import "./look/fields.css";
import "./look/print.css";
import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { RouterProvider } from "@tanstack/react-router";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { keepShellOffline } from "./offline-shell.ts";
import { routerOver } from "./routes.tsx";

const queries = new QueryClient({
  // "always": this page answers without a network, from the copy on the device
  defaultOptions: {
    queries: { networkMode: "always", retry: false, staleTime: 10_000 },
    mutations: { networkMode: "always" },
  },
});

const place = document.getElementById("sheet");
if (place === null) throw new Error("index.html has no #sheet");
createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <RouterProvider router={routerOver()} />
    </QueryClientProvider>
  </StrictMode>,
);
keepShellOffline();
