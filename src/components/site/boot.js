try {
  const theme = localStorage.getItem('suds.theme');
  if (theme) document.documentElement.dataset.theme = theme;
} catch {}
const tell = () => {
  if (notices.firstChild?.nodeName !== 'P')
    notices.insertAdjacentHTML(
      'afterbegin',
      '<p class="notice">Part of this page has not arrived: it may show its example, and keep nothing you type. Load it again.</p>',
    );
};
addEventListener('error', ({ target }) => target.type === 'module' && tell(), true);
setTimeout(() => document.body.dataset.came ?? tell(), 15000);
