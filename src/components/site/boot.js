// Before the first paint: the theme the reader chose, if they chose one.
try {
  const theme = localStorage.getItem('suds.theme');
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch {
  // No storage: the system's theme stands.
}
