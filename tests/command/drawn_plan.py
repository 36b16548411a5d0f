"""A small plan for the command line's tests, drawn here: 240 × 160 grey pixels, dark lines 2.4 pixels wide on light paper."""
import math
import struct
import zlib

WIDTH, HEIGHT = 240, 160
BAR = [(20, 40), (220, 40)]
UPRIGHT = [(20, 40), (20, 100)]
BROKEN_BAR = [[(20, 40), (110, 40)], [(120, 53), (220, 53)]]
HALF_WING = [(20, 80), (180, 80), (180, 110), (20, 120)]


def distance(x, y, a, b):
    dx, dy = b[0] - a[0], b[1] - a[1]
    t = max(0, min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)))
    return math.hypot(x - a[0] - t * dx, y - a[1] - t * dy)


def write(path, runs=(BAR, HALF_WING)):
    lines = [ends for run in runs for ends in zip(run, run[1:])]
    rows = b''
    for y in range(HEIGHT):
        rows += b'\0' + bytes(round(40 + 200 * max(0, min(1, min(distance(x + 0.5, y + 0.5, a, b) for a, b in lines) - 0.7)))
                              for x in range(WIDTH))
    chunks = [(b'IHDR', struct.pack('>IIBBBBB', WIDTH, HEIGHT, 8, 0, 0, 0, 0)), (b'IDAT', zlib.compress(rows)), (b'IEND', b'')]
    with open(path, 'wb') as file:
        file.write(b'\x89PNG\r\n\x1a\n')
        for kind, data in chunks:
            file.write(struct.pack('>I', len(data)) + kind + data + struct.pack('>I', zlib.crc32(kind + data)))
