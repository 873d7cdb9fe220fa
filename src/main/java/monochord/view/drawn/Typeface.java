package monochord.view.drawn;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.IntPredicate;

/**
 * The face in which words are set on paper, read from the font file that goes with the program: how wide each character is,
 * and which it has. Its double accidentals are signs of music, which it lacks.
 *
 * <p>Source: OpenType 1.9, tables {@code cmap} in format 12, {@code head}, {@code hhea},
 * {@code hmtx}.
 */
public enum Typeface {
    REGULAR("DejaVuSansCondensed.ttf"),
    BOLD("DejaVuSansCondensed-Bold.ttf");

    /** Names under which a reader may have it, and what stands in for it. */
    public static final String FAMILY = "'DejaVu Sans Condensed', 'Arial Narrow', sans-serif";
    /** How long a staff space of a sign of music between letters is, as a share of their size. */
    public static final double SIGN = 0.3;

    /** What is drawn for a character that it lacks. */
    public static final int UNKNOWN = 0xFFFD;

    private static final int DOUBLE_SHARP = 0x1D12A;
    private static final int DOUBLE_FLAT = 0x1D12B;

    private final String file;
    private Metrics metrics;

    Typeface(String file) {
        this.file = file;
    }

    /** The font file itself. */
    public InputStream open() {
        return Typeface.class.getResourceAsStream(file);
    }

    /** The sign of music that stands for a character which no face of letters has; null for all others. */
    public static MusicSign sign(int character) {
        return switch (character) {
            case DOUBLE_SHARP -> MusicSign.accidental(2);
            case DOUBLE_FLAT -> MusicSign.accidental(-2);
            default -> null;
        };
    }

    /** Whether it can set a character, be it as a sign of music. */
    public boolean has(int character) {
        return sign(character) != null || metrics().glyph(character) > 0;
    }

    /** How wide a text is, as a multiple of its size. */
    public double width(String text) {
        return text.codePoints().mapToDouble(this::width).sum();
    }

    private double width(int character) {
        MusicSign sign = sign(character);
        if (sign != null) {
            return sign.box().right() * SIGN;
        }
        Metrics known = metrics();
        int glyph = known.glyph(character);
        return known.width(glyph > 0 ? glyph : known.glyph(UNKNOWN));
    }

    private synchronized Metrics metrics() {
        if (metrics == null) {
            try (InputStream font = open()) {
                metrics = new Metrics(ByteBuffer.wrap(font.readAllBytes()));
            } catch (IOException broken) {
                throw new UncheckedIOException("our own font cannot be read", broken);
            }
        }
        return metrics;
    }

    /** The tables of the font that tell widths. */
    private static final class Metrics {
        private static final int TABLES = 12;
        private static final int ROW = 16;
        private static final int GROUP = 12;
        private static final int SEGMENTED = 12;

        private final ByteBuffer font;
        private final int groups;
        private final int widths;
        private final int widthCount;
        private final double unitsPerEm;

        Metrics(ByteBuffer font) {
            this.font = font;
            int characters = table("cmap");
            this.groups = subtable(characters);
            this.widths = table("hmtx");
            this.widthCount = Short.toUnsignedInt(font.getShort(table("hhea") + 34));
            this.unitsPerEm = font.getShort(table("head") + 18);
        }

        private int table(String name) {
            return find(font.getShort(4), i -> {
                byte[] tag = new byte[4];
                font.get(TABLES + ROW * i, tag);
                return new String(tag, StandardCharsets.US_ASCII).equals(name);
            });
        }

        /** The place that a row of the list of tables tells. */
        private int find(int count, IntPredicate wanted) {
            for (int i = 0; i < count; i++) {
                if (wanted.test(i)) {
                    return font.getInt(TABLES + ROW * i + 8);
                }
            }
            throw new IllegalStateException("our own font lacks a table");
        }

        private int subtable(int characters) {
            for (int i = 0; i < font.getShort(characters + 2); i++) {
                int place = characters + font.getInt(characters + 4 + 8 * i + 4);
                if (font.getShort(place) == SEGMENTED) {
                    return place;
                }
            }
            throw new IllegalStateException("our own font has no table of all characters");
        }

        /** 0 if there is none. */
        int glyph(int character) {
            int low = 0;
            int high = font.getInt(groups + 12) - 1;
            while (low <= high) {
                int middle = (low + high) / 2;
                int group = groups + 16 + GROUP * middle;
                if (character < font.getInt(group)) {
                    high = middle - 1;
                } else if (character > font.getInt(group + 4)) {
                    low = middle + 1;
                } else {
                    return font.getInt(group + 8) + character - font.getInt(group);
                }
            }
            return 0;
        }

        double width(int glyph) {
            return Short.toUnsignedInt(font.getShort(widths + 4 * Math.min(glyph, widthCount - 1))) / unitsPerEm;
        }
    }
}
