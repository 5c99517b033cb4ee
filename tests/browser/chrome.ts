import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const installed = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * Starts a headless Chromium: an installed one where there is one, else the one that a package of the registry ships.
 * @param video a .mjpeg file that stands in for the camera
 */
export async function startChrome(video: string): Promise<Browser> {
  const camera = [
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${video}`,
  ];
  return start(camera);
}

/** Starts a headless Chromium with WebGPU on a graphics processor that is played by software, so that any machine has one. */
export function startPlayedGpu(): Promise<Browser> {
  return start(['--enable-unsafe-webgpu', '--use-webgpu-adapter=swiftshader', '--enable-features=Vulkan']);
}

async function start(args: string[]): Promise<Browser> {
  const found = process.env.CHROME_PATH ?? installed.find((path) => existsSync(path));
  // The package's own arguments are for another place: one process, which goes with the first page that closes.
  const executablePath = found ?? (await (await import('@sparticuz/chromium')).default.executablePath());
  return chromium.launch({ executablePath, args: ['--no-sandbox', ...args] });
}
