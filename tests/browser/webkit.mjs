// WebKit by the GTK port's WebKitWebDriver and the small browser that comes with it, on a virtual display of its own.
//
// Every process started here stands under a time limit: this driver has been seen to wait for ever for a browser that is gone.
// It has no DevTools commands, no emulated scheme, and no log of console or network. So a listener goes into the page once it has
// started: errors, what goes to console.error, and what the page's policy forbade are heard from then on, not before. The requests
// are those that the page itself lists, which leaves out one that failed.

import { spawn } from "node:child_process";
import { mkdir, readdir } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";
import { Builder, Capabilities } from "selenium-webdriver";
import { ChromiumOnly, DriverSilent, limited, program, reveal, within } from "./program.mjs";

/** Seconds after which the browser and its display are ended, whatever they do. */
const LIMIT = 300;
/** The part of the name between Debian's library folder and the browser has changed with each series. */
const LIBRARIES = ["/usr/lib", `/usr/lib/${{ x64: "x86_64", arm64: "aarch64" }[process.arch] ?? process.arch}-linux-gnu`];

/** Seconds for a session to begin; it takes about one. */
const START = 60;

/** Seconds for an answer to a command: the longest wait for a page or for a script. */
const ANSWER = 60;

/** A driver that does not bring up its browser is ended and started afresh, once; nothing of a journey has run then. */
export async function launchWebkit(options) {
  try {
    return await start(options, "first");
  } catch (cause) {
    console.log(`WebKit did not start (${cause.message}); once more`);
    return start(options, "second");
  }
}

async function start({ lang = "en-GB", record = true, folder: given }, time) {
  const folder = join(given, time);
  await mkdir(folder);
  const started = [];
  const run = (path, args, options) => {
    // `timeout` makes a process group of its own, so that what the driver starts goes with it.
    const child = spawn("timeout", ["--kill-after=5", String(LIMIT), path, ...args], options);
    child.on("error", () => {});
    started.push(child);
    return child;
  };
  const end = () => started.reverse().forEach(stop);
  try {
    const display = await virtualDisplay(run);
    const home = join(folder, "home");
    await mkdir(home);
    const port = await freePort();
    run(program("WEBKITWEBDRIVER", "WebKitWebDriver"), [`--port=${port}`, "--host=127.0.0.1"], {
      stdio: "ignore",
      env: {
        ...process.env,
        DISPLAY: display,
        GDK_BACKEND: "x11",
        HOME: home,
        XDG_CONFIG_HOME: home,
        XDG_CACHE_HOME: home,
        XDG_DATA_HOME: home,
        TMPDIR: folder,
        LANG: "C.UTF-8",
        LANGUAGE: lang.replace("-", "_"),
        GTK_THEME: "Adwaita",
        NO_AT_BRIDGE: "1",
        LIBGL_ALWAYS_SOFTWARE: "1",
        WEBKIT_DISABLE_COMPOSITING_MODE: "1",
        // The only pages opened are this machine's own, and a container seldom lets the sandbox be set up.
        WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
      },
    });
    const capabilities = new Capabilities({
      browserName: "MiniBrowser",
      "webkitgtk:browserOptions": {
        binary: await miniBrowser(),
        args: ["--automation"],
      },
    });
    await answers(port);
    const session = new Builder().usingServer(`http://127.0.0.1:${port}`).withCapabilities(capabilities).build();
    const driver = await within(START, session, () => new DriverSilent(`no session within ${START} s`)).then((driver) => limited(driver, ANSWER));

    return {
      driver,
      name: "webkit",
      schemes: ["light"],
      // Of some thirty pictures one was never answered, and no command after it.
      pictures: false,
      listen: () => driver.executeScript(listen),
      inject: (text) => driver.executeScript(text),
      reveal: (element) => driver.executeScript(reveal, element),
      async command(method) {
        throw new ChromiumOnly(method, "WebKit");
      },
      /** Size only, and that of the view as near as the window's frame allows: scale, touch and scheme are the machine's own. */
      async look({ width, height }) {
        const [wide, high] = await driver.executeScript(() => [outerWidth - innerWidth, outerHeight - innerHeight]);
        await driver.manage().window().setRect({ x: 0, y: 0, width: width + wide, height: height + high });
      },
      async downloads() {
        throw new ChromiumOnly("A folder for what the page saves", "WebKit");
      },
      async complaints() {
        if (!record) return [];
        return driver.executeScript(takeHeard);
      },
      async requests() {
        if (!record) return [];
        return driver.executeScript(() => [location.href, ...performance.getEntriesByType("resource").map((entry) => entry.name)]);
      },
      async close() {
        // One that does not answer is ended all the same.
        let late;
        await Promise.race([driver.quit().catch(() => {}), new Promise((done) => (late = setTimeout(done, 5000)))]);
        clearTimeout(late);
        end();
      },
    };
  } catch (cause) {
    end();
    throw cause;
  }
}

/** Ends a process group that was started here. */
function stop(child) {
  try {
    process.kill(-child.pid, "SIGTERM");
  } catch {
    // It is gone already.
  }
}

/** A display without a screen; gives its name, such as ":99". */
async function virtualDisplay(run) {
  const args = ["-displayfd", "3", "-screen", "0", "1600x1300x24", "-nolisten", "tcp"];
  const child = run(program("XVFB", "Xvfb"), args, { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  return new Promise((ready, fail) => {
    let text = "";
    child.stdio[3].on("data", (data) => {
      text += data;
      if (text.includes("\n")) ready(`:${text.trim()}`);
    });
    child.on("exit", (code) => fail(new Error(`the virtual display ended with ${code}`)));
  });
}

async function miniBrowser() {
  if (process.env.WEBKIT) return process.env.WEBKIT;
  for (const library of LIBRARIES) {
    const names = (await readdir(library).catch(() => [])).filter((name) => /^webkit(2)?gtk-/.test(name)).sort();
    for (const name of names.reverse()) {
      const path = join(library, name, "MiniBrowser");
      if ((await readdir(join(library, name)).catch(() => [])).includes("MiniBrowser")) return path;
    }
  }
  throw new Error("WebKit's MiniBrowser is not on this machine: tests/tool/check.sh installs it");
}

function freePort() {
  return new Promise((found) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => found(port));
    });
  });
}

/** Waits until the driver answers on its port. */
async function answers(port) {
  for (let tries = 0; tries < 200; tries++) {
    const alive = await fetch(`http://127.0.0.1:${port}/status`).then(() => true, () => false);
    if (alive) return;
    await new Promise((next) => setTimeout(next, 50));
  }
  throw new Error("WebKitWebDriver does not answer");
}

/** In the page: notes what goes wrong, over reloads too. */
function listen() {
  if (window.haulmListens) return;
  window.haulmListens = true;
  const note = (text) => {
    sessionStorage["harness/heard"] = JSON.stringify([...JSON.parse(sessionStorage["harness/heard"] ?? "[]"), String(text)]);
  };
  addEventListener("error", (event) => note(event.message ?? `not loaded: ${event.target.src ?? event.target.href}`), true);
  addEventListener("unhandledrejection", (event) => note(event.reason));
  addEventListener("securitypolicyviolation", (event) => note(`${event.violatedDirective} forbids ${event.blockedURI}`));
  const before = console.error;
  console.error = (...all) => {
    note(all.join(" "));
    before.apply(console, all);
  };
}

/** In the page: what was noted since last asked. */
function takeHeard() {
  const heard = JSON.parse(sessionStorage["harness/heard"] ?? "[]");
  sessionStorage.removeItem("harness/heard");
  return heard;
}
