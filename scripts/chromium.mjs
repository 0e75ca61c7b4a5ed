// Finds a Chromium for the browser tests; on Debian as root it installs Debian's own. Node built-ins only.
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function onPath() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(runnable);
}

function isDebian() {
  return (
    existsSync("/etc/debian_version") ||
    (existsSync("/etc/os-release") && /debian/i.test(readFileSync("/etc/os-release", "utf8")))
  );
}

function installDebians() {
  console.log(
    "Browser tests need Chromium: installing Debian's package chromium (a few minutes the first time)…",
  );
  const quiet = {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  };
  spawnSync("apt-get", ["update", "-qq"], quiet);
  spawnSync("apt-get", ["install", "-y", "-qq", "chromium"], quiet);
  return onPath();
}

/** The path of a Chromium, or undefined after saying exactly what to install. */
export function findChromium() {
  const named = process.env.HALLFUL_CHROMIUM;
  if (named !== undefined && named !== "") {
    if (runnable(named)) return named;
    console.error(`HALLFUL_CHROMIUM names ${named}, which cannot be run. Set it to the path of a Chromium.`);
    return undefined;
  }
  const found = onPath() ?? (isDebian() && process.getuid?.() === 0 ? installDebians() : undefined);
  if (found === undefined) {
    console.error(
      "The browser tests need Chromium and none was found. On Debian or Ubuntu: sudo apt-get install chromium. " +
        "Elsewhere install Chromium or Chrome and set HALLFUL_CHROMIUM to its path. Then run npm test again.",
    );
  }
  return found;
}
