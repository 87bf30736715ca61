// The only place that knows which browser runs. An engine is opened with `launch` and gives:
//
//   driver            the WebDriver session
//   look(options)     width, height, scale, touch, scheme ("light" or "dark"): sets what the page sees
//   complaints()      what the console reported as an error since last asked, as texts
//   requests()        the addresses asked for since last asked
//   command(m, p)     a DevTools command and its answer (Chromium only: a journey that uses it runs there only)
//   close()
//
// Another engine (Firefox by geckodriver, WebKitGTK by WebKitWebDriver under a virtual display and with a time limit) is one more
// function in ENGINES with the same answers; HAULM_BROWSER chooses.

import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { Builder, logging } from "selenium-webdriver";
import chrome from "selenium-webdriver/chrome.js";

const ENGINES = { chromium };

/** Starts the browser with a profile of its own; `folder` is where it may put what it likes. */
export async function launch(options) {
  const name = process.env.HAULM_BROWSER ?? "chromium";
  const engine = ENGINES[name];
  if (!engine) throw new Error(`HAULM_BROWSER is "${name}"; known are ${Object.keys(ENGINES).join(", ")}`);
  return engine(options);
}

/** A program's path, so that the driver's own manager is never asked (it would download one). */
function program(variable, name) {
  const named = process.env[variable];
  if (named?.includes("/")) return named;
  const found = process.env.PATH.split(delimiter)
    .map((folder) => join(folder, named ?? name))
    .find((path) => existsSync(path));
  if (!found) throw new Error(`${named ?? name} is not on this machine: tests/tool/check.sh installs it`);
  return found;
}

async function chromium({ lang = "en-GB", record = true, folder, profile }) {
  const options = new chrome.Options();
  options.setBinaryPath(program("CHROMIUM", "chromium"));
  options.addArguments(
    "--headless=new",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-default-apps",
    "--disable-dev-shm-usage",
    "--disable-gpu",
    "--disable-quic",
    "--disable-sync",
    "--no-first-run",
    `--lang=${lang}`,
    `--accept-lang=${lang}`,
  );
  // A profile that outlasts the browser; as a rule each browser has a new one.
  if (profile) options.addArguments(`--user-data-dir=${profile}`);
  if (process.getuid?.() === 0) options.addArguments("--no-sandbox");
  if (record) {
    const kept = new logging.Preferences();
    kept.setLevel(logging.Type.BROWSER, logging.Level.ALL);
    kept.setLevel(logging.Type.PERFORMANCE, logging.Level.ALL);
    options.setLoggingPrefs(kept);
    options.setPerfLoggingPrefs({ enableNetwork: true, enablePage: false });
  }
  const service = new chrome.ServiceBuilder(program("CHROMEDRIVER", "chromedriver"));
  // It leaves its scraps where it puts its temporary files.
  service.setEnvironment({ ...process.env, TMPDIR: folder });
  const driver = await new Builder().forBrowser("chrome").setChromeOptions(options).setChromeService(service).build();
  const command = (method, params = {}) => driver.sendAndGetDevToolsCommand(method, params);
  return {
    driver,
    command,
    async look({ width, height, scale = 1, touch = false, scheme = "light" }) {
      await command("Emulation.setDeviceMetricsOverride", { width, height, deviceScaleFactor: scale, mobile: touch });
      await command("Emulation.setTouchEmulationEnabled", { enabled: touch, maxTouchPoints: touch ? 5 : 1 });
      await command("Emulation.setEmulatedMedia", {
        features: [
          { name: "prefers-color-scheme", value: scheme },
          // A colour half way through a transition would be judged by axe.
          { name: "prefers-reduced-motion", value: "reduce" },
        ],
      });
    },
    async complaints() {
      if (!record) return [];
      const entries = await driver.manage().logs().get(logging.Type.BROWSER);
      return entries.filter((entry) => entry.level.value >= logging.Level.SEVERE.value).map((entry) => entry.message);
    },
    async requests() {
      if (!record) return [];
      const entries = await driver.manage().logs().get(logging.Type.PERFORMANCE);
      return entries
        .map((entry) => JSON.parse(entry.message).message)
        .filter((event) => event.method === "Network.requestWillBeSent")
        .map((event) => event.params.request.url);
    },
    close: () => driver.quit(),
  };
}
