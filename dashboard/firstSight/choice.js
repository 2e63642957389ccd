// In every page before its first sight: whether that is what the user is to see, decided before anything is shown.
((path, narrow) => {
  const isSeen = () => {
    try {
      return (
        location.pathname === path &&
        location.hash === "" &&
        localStorage.length === 0 &&
        /^en\b/.test(navigator.language) &&
        (innerWidth < 600 || !narrow)
      );
    } catch {
      return false;
    }
  };
  if (isSeen()) {
    // What is done before the page's own script has come is done again by it.
    globalThis.doneBefore = [];
    for (const kind of ["click", "input"])
      document.addEventListener(kind, (event) => globalThis.doneBefore?.push(event), true);
  } else document.documentElement.dataset.sight = "none";
})(document.currentScript.dataset.path, document.currentScript.dataset.narrow === "yes");
