#!/usr/bin/env python3
"""The program links nothing that understands plans; its decoder does: check-linking.py PROGRAM DECODER"""
import re
import subprocess
import sys

UNDERSTANDS = re.compile(r'lib(poppler|rsvg|seccomp|tiff|jpeg|webp)')


def linked(program):
    listing = subprocess.run(['readelf', '--dynamic', program], capture_output=True, text=True, check=True).stdout
    return re.findall(r'\(NEEDED\).*\[(.*)\]', listing)


program, decoder = (linked(path) for path in sys.argv[1:3])
complaints = [f'trammel links {name}' for name in program if UNDERSTANDS.match(name)]
for wanted in ('poppler', 'rsvg', 'seccomp', 'gdk_pixbuf'):
    if not any(wanted in name for name in decoder):
        complaints.append(f'trammel-decoder does not link {wanted}: is this the right program?')
for complaint in complaints:
    print(complaint, file=sys.stderr)
print(f'{0 if complaints else 100}%: Checks: 5, Failures: {len(complaints)}, Errors: 0')
sys.exit(1 if complaints else 0)
