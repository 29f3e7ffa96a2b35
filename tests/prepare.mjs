// Finds what the tests need besides npm packages, installs it where that is possible, and says what is missing.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const works = (command, args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;

/** What is needed, how to see that it is there, and the Debian package that has it. */
const NEEDS = [
  {
    what: 'Chromium (/usr/bin/chromium), which renders the SVG files and the pages',
    package: 'chromium',
    found: () => existsSync('/usr/bin/chromium'),
  },
  {
    what: 'Poppler (pdftocairo, pdftotext), which reads the PDF files',
    package: 'poppler-utils',
    found: () => works('pdftocairo', ['-v']) && works('pdftotext', ['-v']),
  },
  {
    what: 'qpdf, which checks the PDF files',
    package: 'qpdf',
    found: () => works('qpdf', ['--version']),
  },
  {
    what: 'ezdxf for /usr/bin/python3, which reads and audits the DXF files',
    package: 'python3-ezdxf',
    found: () => works('/usr/bin/python3', ['-c', 'import ezdxf']),
  },
];

const missing = () => NEEDS.filter((need) => !need.found());

let open = missing();
if (open.length > 0 && process.getuid?.() === 0 && works('apt-get', ['--version'])) {
  const packages = open.map((need) => need.package);
  console.log(`Installing what the tests need: ${packages.join(', ')}`);
  const options = { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  spawnSync('apt-get', ['update', '-qq'], options);
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], options);
  open = missing();
}
if (open.length > 0) {
  console.error('The tests need, and cannot find or install:');
  for (const need of open) console.error(`  - ${need.what}`);
  console.error('On Debian or Ubuntu:');
  console.error(`  sudo apt-get install ${open.map((need) => need.package).join(' ')}`);
  process.exit(1);
}
