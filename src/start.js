// Starts the app and takes the first paint of index.html away. No inline script: the page's policy forbids it.
try {
  const { default: start } = await import("./haulm.js");
  await start();
  document.getElementById("start").remove();
} catch (cause) {
  console.error(cause);
  document.getElementById("start-state").textContent =
    "Haulm did not start: a part of the program did not arrive, or this browser is too old to run it. " +
    "Reload the page; where that does not help, use a newer browser. What was saved in this browser is untouched.";
}
