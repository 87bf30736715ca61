// What the engines share: where their programs are, and what they say and do alike.

import { existsSync, readFileSync, readdirSync } from "node:fs";
import { delimiter, join } from "node:path";

/** Tools that tests/tool/setup.sh built itself. */
const OWN = join(process.env.XDG_CACHE_HOME ?? join(process.env.HOME ?? "", ".cache"), "haulm/bin");

/** A program's path, so that the driver's own manager is never asked (it would download one); `variable` names another one. */
export function program(variable, name) {
  const named = process.env[variable];
  if (named?.includes("/")) return named;
  const found = [...process.env.PATH.split(delimiter), OWN].map((folder) => join(folder, named ?? name)).find((path) => existsSync(path));
  if (!found) throw new Error(`${named ?? name} is not on this machine: tests/tool/check.sh installs it`);
  return found;
}

/** A journey asked for what only Chromium's driver can do. Where the whole run is in another engine, it is skipped with these words. */
export class ChromiumOnly extends Error {
  constructor(what, engine) {
    super(`${what} is there in Chromium only, this is ${engine}`);
  }
}

/** A driver that no longer answers: nothing is known of the app then. */
export class DriverSilent extends Error {}

/** Puts each command to a driver under a time limit in seconds. One that was not answered was the last. */
export function limited(driver, seconds) {
  const execute = driver.execute.bind(driver);
  let silent;
  driver.execute = (command) => {
    if (silent) return Promise.reject(silent);
    const what = `${command.getName()} was not answered within ${seconds} s`;
    return within(seconds, execute(command), () => (silent = new DriverSilent(what)));
  };
  return driver;
}

/** What comes within so many seconds, or the error that is made. */
export function within(seconds, awaited, error) {
  let late;
  const limit = new Promise((_, fail) => (late = setTimeout(() => fail(error()), seconds * 1000)));
  // An error that comes after all has been told already.
  awaited.catch(() => {});
  return Promise.race([awaited, limit]).finally(() => clearTimeout(late));
}

/** Every process that was started with this folder for its temporary files: a driver and its browser. */
export function allOf(folder) {
  return readdirSync("/proc").filter((pid) => {
    try {
      return /^\d+$/.test(pid) && readFileSync(`/proc/${pid}/environ`, "utf8").split("\0").includes(`TMPDIR=${folder}`);
    } catch {
      // It is gone already, or somebody else's.
      return false;
    }
  });
}

/** Ends all of them, and those that they started meanwhile. */
export function endAllOf(folder) {
  for (let rounds = 0, all = allOf(folder); all.length > 0 && rounds < 100; rounds++, all = allOf(folder)) {
    for (const pid of all) {
      try {
        process.kill(Number(pid), "SIGKILL");
      } catch {
        // It is gone already.
      }
    }
  }
}

/** In the page: to the middle, since these drivers do not bring what they click out from under a bar that sticks to an edge. */
export function reveal(element) {
  element.scrollIntoView({ block: "center", behavior: "instant" });
}
