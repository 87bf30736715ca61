// The only place that knows which browser runs. An engine is opened with `launch` and gives:
//
//   driver            the WebDriver session
//   look(options)     width, height, scale, touch, scheme ("light" or "dark"), forced colours: sets what the page sees; with
//                     `onlyColours` the rest is as it was
//   complaints()      what the console reported as an error since last asked, as texts
//   requests()        the addresses asked for since last asked
//   listen()          called when the page has started, where its errors are heard only from inside it (else absent)
//   inject(text)      runs a library in the page
//   reveal(element)   scrolls to what will be clicked, where the driver does not do that well by itself (else absent)
//   downloads(folder) puts what the page saves from now on into this folder
//   command(m, p)     a DevTools command and its answer (Chromium only: a journey that uses it is skipped elsewhere, in words)
//   name, schemes     which engine it is, and the colour schemes it can show
//   pictures          false where the driver cannot be trusted with a screenshot
//   afresh()         puts a new tab in place of all that are open, as a new browser has it (else absent)
//   close()
//
// Chromium comes with its window, hidden; HAULM_WINDOWLESS names the program without one, which takes half the time of a journey's browser.
// HAULM_ENGINE chooses for a whole run (chromium, firefox, webkit), a journey's option `engine` for that journey.

import { Builder, logging } from "selenium-webdriver";
import chrome from "selenium-webdriver/chrome.js";
import { launchFirefox } from "./firefox.mjs";
import { program } from "./program.mjs";
import { launchWebkit } from "./webkit.mjs";

const ENGINES = { chromium, firefox: launchFirefox, webkit: launchWebkit };

/** Starts the browser with a profile of its own; `folder` is where it may put what it likes. */
export async function launch(options) {
  const name = options.engine ?? process.env.HAULM_ENGINE ?? "chromium";
  const engine = ENGINES[name];
  if (!engine) throw new Error(`no engine is called "${name}"; known are ${Object.keys(ENGINES).join(", ")}`);
  return engine(options);
}

async function chromium({ lang = "en-GB", record = true, folder, profile }) {
  const options = new chrome.Options();
  // A profile that outlasts the browser takes the whole of it.
  const isWhole = profile || process.env.CHROMIUM || !process.env.HAULM_WINDOWLESS;
  options.setBinaryPath(isWhole ? program("CHROMIUM", "chromium") : program("HAULM_WINDOWLESS", "chromium"));
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
    name: "chromium",
    schemes: ["light", "dark"],
    inject: (text) => driver.executeScript(text),
    command,
    downloads: (downloadPath) => command("Browser.setDownloadBehavior", { behavior: "allow", downloadPath }),
    async look({ width, height, scale = 1, touch = false, scheme = "light", forced = false, onlyColours = false }) {
      if (!onlyColours) {
        await command("Emulation.setDeviceMetricsOverride", { width, height, deviceScaleFactor: scale, mobile: touch });
        await command("Emulation.setTouchEmulationEnabled", { enabled: touch, maxTouchPoints: touch ? 5 : 1 });
      }
      await command("Emulation.setEmulatedMedia", {
        features: [
          { name: "prefers-color-scheme", value: scheme },
          { name: "forced-colors", value: forced ? "active" : "none" },
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
    async afresh() {
      const open = await driver.getAllWindowHandles();
      await driver.switchTo().newWindow("tab");
      const fresh = await driver.getWindowHandle();
      for (const tab of open) {
        await driver.switchTo().window(tab);
        await driver.close();
      }
      await driver.switchTo().window(fresh);
      await command("Browser.setDownloadBehavior", { behavior: "default" });
      // What the old tabs have said was read.
      for (const log of [logging.Type.BROWSER, logging.Type.PERFORMANCE]) await driver.manage().logs().get(log);
    },
    close: () => driver.quit(),
  };
}
