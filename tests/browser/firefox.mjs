// Firefox by geckodriver. What the page says and asks for is heard over WebDriver BiDi; the scheme is a preference, set from the
// browser's own side, so axe judges light and dark here too.

import { Builder } from "selenium-webdriver";
import firefox from "selenium-webdriver/firefox.js";
import { ChromiumOnly, DriverSilent, endAllOf, limited, program, reveal, within } from "./program.mjs";

const SCHEME = "layout.css.prefers-color-scheme.content-override";

/** Seconds for a session to begin, and for an answer to a command. */
const START = 60;
const ANSWER = 60;

/** What Firefox says, without an address, of a request that a reload breaks off while the worker answers it: a part of the program fetched in advance. */
const BROKEN_OFF = /^Failed to load ‘’\. A ServiceWorker intercepted the request and encountered an unexpected error\.?$/;

export async function launchFirefox({ lang = "en-GB", record = true, folder, start = START }) {
  const options = new firefox.Options();
  options.setBinary(program("FIREFOX", "firefox-esr"));
  options.addArguments("-headless");
  const preferences = {
    "intl.accept_languages": lang,
    "intl.locale.requested": lang,
    "ui.prefersReducedMotion": 1,
    [SCHEME]: 1,
    // Nothing but the page asks the network for anything.
    "app.normandy.enabled": false,
    "app.update.auto": false,
    "browser.safebrowsing.downloads.remote.enabled": false,
    "browser.safebrowsing.malware.enabled": false,
    "browser.safebrowsing.phishing.enabled": false,
    "datareporting.policy.dataSubmissionEnabled": false,
    "extensions.update.enabled": false,
    "network.captive-portal-service.enabled": false,
    "network.connectivity-service.enabled": false,
    "services.settings.server": "data:,",
    "toolkit.telemetry.enabled": false,
  };
  for (const [key, value] of Object.entries(preferences)) options.setPreference(key, value);
  options.enableBidi();
  const service = new firefox.ServiceBuilder(program("GECKODRIVER", "geckodriver"));
  // Lets the driver reach the browser's own preferences; a page cannot ask for that, only who starts the driver.
  service.addArguments("--allow-system-access");
  service.setEnvironment({ ...process.env, TMPDIR: folder, MOZ_CRASHREPORTER_DISABLE: "1" });
  // Whatever goes wrong before the engine is given away, nobody else would end the driver and its browser.
  try {
    return await begin(options, service, { record, folder, start });
  } catch (cause) {
    endAllOf(folder);
    throw cause;
  }
}

async function begin(options, service, { record, folder, start }) {
  const session = new Builder().forBrowser("firefox").setFirefoxOptions(options).setFirefoxService(service).build();
  const driver = limited(await within(start, session, () => new DriverSilent(`no session within ${start} s`)), ANSWER);
  const bidi = await within(ANSWER, driver.getBidi(), () => new DriverSilent(`no BiDi within ${ANSWER} s`));
  const tell = async (method, params) => {
    const answer = await bidi.send({ method, params });
    if (answer.type === "error" || answer.error) throw new Error(`${method}: ${answer.error}: ${answer.message}`);
    return answer.result;
  };
  const complaints = [];
  const requests = [];
  if (record) {
    bidi.on("log.entryAdded", ({ level, text }) => level === "error" && !BROKEN_OFF.test(text) && complaints.push(text ?? "an error without words"));
    bidi.on("network.beforeRequestSent", ({ request }) => requests.push(request.url));
    await bidi.subscribe("log.entryAdded");
    await bidi.subscribe("network.beforeRequestSent");
  }
  const taken = (list) => list.splice(0);

  return {
    driver,
    name: "firefox",
    schemes: ["light", "dark"],
    async command(method) {
      throw new ChromiumOnly(method, "Firefox");
    },
    reveal: (element) => driver.executeScript(reveal, element),
    /** In the page's own realm: a script of the classic driver runs beside it, with a global object of its own. */
    async inject(text) {
      const context = await driver.getWindowHandle();
      // The last value is sent back, and a library is a large one.
      const expression = `${text}\n;undefined`;
      const answer = await tell("script.evaluate", { expression, target: { context }, awaitPromise: false });
      if (answer.type === "exception") throw new Error(answer.exceptionDetails.text);
    },
    /** Fingers are not imitated: a tap comes as a click. */
    async look({ width, height, scale = 1, scheme = "light" }) {
      const context = await driver.getWindowHandle();
      await tell("browsingContext.setViewport", { context, viewport: { width, height }, devicePixelRatio: scale });
      await driver.setContext(firefox.Context.CHROME);
      try {
        await driver.executeScript((key, value) => Services.prefs.setIntPref(key, value), SCHEME, scheme === "dark" ? 0 : 1);
      } finally {
        await driver.setContext(firefox.Context.CONTENT);
      }
    },
    downloads: (folder) =>
      tell("browser.setDownloadBehavior", { downloadBehavior: { type: "allowed", destinationFolder: folder } }),
    complaints: async () => taken(complaints),
    requests: async () => taken(requests),
    async close() {
      await driver.quit().catch(() => {});
      endAllOf(folder);
    },
  };
}
