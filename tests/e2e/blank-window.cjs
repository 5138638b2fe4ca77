// What Electron's runtime is started with when it stands in for a browser: one empty, sandboxed window, in which a
// test then opens its page. Arguments: width and height of the page.
const { app, BrowserWindow } = require('electron');

const [width, height] = process.argv.slice(-2).map(Number);

app.whenReady().then(() => {
  const window = new BrowserWindow({
    width,
    height,
    useContentSize: true,
    webPreferences: { sandbox: true },
  });
  window.loadURL('about:blank');
});
app.on('window-all-closed', () => app.quit());
