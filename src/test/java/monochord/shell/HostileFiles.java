package monochord.shell;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files of every kind that the program reads, damaged in every way; the same seed gives the same files. */
final class HostileFiles {
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final List<String> MONSTERS = List.of(
            "0",
            "-1",
            "1/0",
            "0/0",
            "NaN",
            "1E-999999999",
            "1E999999999",
            "1e400",
            "2147483648",
            "-9223372036854775808",
            "9".repeat(5_000),
            "9".repeat(60_000),
            "0." + "0".repeat(20_000) + "1",
            "1/" + "7".repeat(9_000));
    private static final List<String> SIGNS = List.of(
            "\u0000",
            "\u0007",
            "\b\b\b",
            "\u001b[2J\u001b[H",
            "\u001b]0;x\u0007",
            "\u009b31m",
            "\u200b\u200d\u2060\ufeff",
            "\u202eevil\u202c",
            "\u2066\u2067\u2069",
            "\u2028\u2029",
            "\r",
            "\uD834",
            "&#27;[2J",
            "&#x202e;",
            "e\u0301\u0301\u0301\u0301\u0301",
            "\uDBFF\uDFFF");

    private HostileFiles() {}

    /** What the program reads, with a sound file of it. */
    enum Format {
        LESSON(".md", "lessons/5-borrowed-colour", "1-"),
        NOTEBOOK(".md", "transcripts-demo", "a-first-evening"),
        SONG(".md", "lessons/tunes", "auld-lang-syne"),
        SHEET(".musicxml", "src/test/resources/monochord/song/musicxml", "auld-lang-syne"),
        PACKED(".mxl", "src/test/resources/monochord/song/musicxml", "auld-lang-syne"),
        TUNES(".abc", "src/test/resources/monochord/song/abc", "tune-book"),
        CHART(".txt", "", ""),
        BANK(".sf2", "", "");

        private final String ending;
        private final String folder;
        private final String start;

        Format(String ending, String folder, String start) {
            this.ending = ending;
            this.folder = folder;
            this.start = start;
        }

        String ending() {
            return ending;
        }

        boolean isBinary() {
            return this == PACKED || this == BANK;
        }

        private byte[] sound() throws IOException {
            return switch (this) {
                case CHART ->
                    "Verse\n\nC        G7\nShould auld acquaintance\nAm  F\nbe forgot\n\nChorus\n| C . F G | C % |\n"
                            .getBytes(UTF_8);
                case BANK -> bank();
                case PACKED -> packed(Files.readAllBytes(file()));
                default -> Files.readAllBytes(file());
            };
        }

        private Path file() throws IOException {
            try (var files = Files.list(Path.of(folder))) {
                return files.filter(file -> file.getFileName().toString().startsWith(start))
                        .sorted()
                        .findFirst()
                        .orElseThrow();
            }
        }

        /** The head of our own bank, and its instruments, which stand behind the sound. */
        private static byte[] bank() throws IOException {
            try (InputStream in = HostileFiles.class.getResourceAsStream("/monochord/sounds.sf2")) {
                byte[] whole = in.readAllBytes();
                int tail = Math.min(60_000, whole.length / 2);
                byte[] part = Arrays.copyOf(whole, 2 * tail);
                System.arraycopy(whole, whole.length - tail, part, tail, tail);
                return part;
            }
        }
    }

    private static byte[] packed(byte[] score) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("META-INF/container.xml"));
            zip.write("<container><rootfiles><rootfile full-path=\"score.xml\"/></rootfiles></container>"
                    .getBytes(UTF_8));
            zip.putNextEntry(new ZipEntry("score.xml"));
            zip.write(score);
        }
        return bytes.toByteArray();
    }

    /** How a file is damaged. */
    enum Damage {
        CUT_SHORT,
        BYTES_CHANGED,
        PIECE_REPEATED,
        MONSTROUS_NUMBERS,
        UNSEEN_SIGNS,
        DEEPLY_NESTED,
        ONE_LONG_LINE,
        LINES_MIXED_UP,
        OTHER_ENCODING,
        ANOTHER_FORMAT;

        private byte[] of(Format format, byte[] sound, Random chance) throws IOException {
            return switch (this) {
                case CUT_SHORT -> Arrays.copyOf(sound, chance.nextInt(sound.length));
                case BYTES_CHANGED -> changed(sound, chance);
                case PIECE_REPEATED -> repeated(sound, chance);
                case OTHER_ENCODING -> encoded(sound, chance);
                case ANOTHER_FORMAT -> Format.values()[chance.nextInt(Format.values().length)].sound();
                default -> inText(format, sound, chance);
            };
        }

        /** Within what a file says, which for a packed sheet is inside its archive. */
        private byte[] inText(Format format, byte[] sound, Random chance) throws IOException {
            byte[] plain = format == Format.PACKED ? Format.SHEET.sound() : sound;
            byte[] damaged = text(
                            format, new String(plain, ISO_8859_1.equals(charset(format)) ? ISO_8859_1 : UTF_8), chance)
                    .getBytes(charset(format));
            return format == Format.PACKED ? packed(damaged) : damaged;
        }

        private static java.nio.charset.Charset charset(Format format) {
            return format == Format.BANK ? ISO_8859_1 : UTF_8;
        }

        private String text(Format format, String text, Random chance) {
            return switch (this) {
                case MONSTROUS_NUMBERS ->
                    NUMBER.matcher(text)
                            .replaceAll(number -> chance.nextInt(6) == 0 ? pick(MONSTERS, chance) : number.group());
                case UNSEEN_SIGNS -> signs(text, chance);
                case DEEPLY_NESTED -> nested(format, text, chance);
                case ONE_LONG_LINE -> text.replace("\n", " ").repeat(1 + chance.nextInt(20));
                default -> mixed(text, chance);
            };
        }
    }

    /** One file. */
    record HostileFile(Format format, Damage damage, int number, byte[] bytes) {
        String name() {
            return "1-odd" + number + format.ending();
        }

        @Override
        public String toString() {
            return format + ", " + damage + ", " + number;
        }
    }

    /** @param each how many in each way */
    static List<HostileFile> of(Format format, long seed, int each) {
        List<HostileFile> files = new ArrayList<>();
        for (Damage damage : Damage.values()) {
            for (int number = 0; number < each; number++) {
                Random chance = new Random(seed + 1000L * number + 31L * format.ordinal() + damage.ordinal());
                try {
                    files.add(new HostileFile(format, damage, number, damage.of(format, format.sound(), chance)));
                } catch (IOException gone) {
                    throw new UncheckedIOException(gone);
                }
            }
        }
        return files;
    }

    private static byte[] changed(byte[] sound, Random chance) {
        byte[] changed = sound.clone();
        for (int times = 1 + chance.nextInt(40); times > 0; times--) {
            changed[chance.nextInt(changed.length)] = (byte) chance.nextInt(256);
        }
        return changed;
    }

    /** A piece of it again and again, up to twice what a lesson may have. */
    private static byte[] repeated(byte[] sound, Random chance) {
        int from = chance.nextInt(sound.length);
        int length = Math.min(1 + chance.nextInt(300), sound.length - from);
        int times = Math.min(1 + chance.nextInt(4_000), 500_000 / length);
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.write(sound, 0, from);
        for (int i = 0; i < times; i++) {
            whole.write(sound, from, length);
        }
        whole.write(sound, from, sound.length - from);
        return whole.toByteArray();
    }

    private static byte[] encoded(byte[] sound, Random chance) {
        String text = new String(sound, UTF_8);
        return switch (chance.nextInt(4)) {
            case 0 -> text.getBytes(UTF_16);
            case 1 -> text.getBytes(ISO_8859_1);
            case 2 -> ("\ufeff" + text.replace("\n", "\r")).getBytes(UTF_8);
            default -> new byte[chance.nextInt(50_000)];
        };
    }

    private static String signs(String text, Random chance) {
        StringBuilder odd = new StringBuilder(text);
        for (int times = 1 + chance.nextInt(60); times > 0; times--) {
            odd.insert(chance.nextInt(odd.length() + 1), pick(SIGNS, chance));
        }
        return odd.toString();
    }

    private static String nested(Format format, String text, Random chance) {
        int place = text.indexOf('\n', chance.nextInt(text.length())) + 1;
        int depth = 10 + chance.nextInt(20_000);
        String open = switch (format) {
            case SHEET, PACKED -> "<note><chord/>";
            case TUNES -> "|: (3(5[(";
            case CHART -> "(C/(";
            case BANK -> "LIST\u00ff\u00ff\u0000\u0000sdta";
            default -> pick(List.of("> ", "- ", "  - ", "*_[", "|: ", "```chords\n", "[a](", "(("), chance);
        };
        return text.substring(0, place) + open.repeat(depth) + text.substring(place);
    }

    private static String mixed(String text, Random chance) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        Collections.shuffle(lines, chance);
        return String.join("\n", lines);
    }

    private static <T> T pick(List<T> from, Random chance) {
        return from.get(chance.nextInt(from.size()));
    }
}
