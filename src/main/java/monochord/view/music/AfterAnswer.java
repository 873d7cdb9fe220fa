package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.after.ClassicalCounts;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.SongCounts;
import monochord.harmony.after.SongCounts.Backing;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.text.Wrap;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.NoteNaming;
import monochord.theory.Numeral;
import monochord.theory.Signs;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Words;

/**
 * Where a chord goes next.
 *
 * @param ways the best first, as many as are to be shown
 * @param classical what came next in classical scores, or nothing
 */
public record AfterAnswer(Key key, Numeral numeral, List<Continuation> ways, List<ClassicalCounts.Row> classical)
        implements Answer {
    /** Lines of an answer on a screen of 24, above the prompt and below what was typed. */
    private static final int SCREEN = 21;

    private static final int FEWEST = 3;
    private static final int NUMERAL = 8;
    private static final int SYMBOL = 8;
    private static final String SCORES = "When in Rome (M. Gotham and others, CC BY-SA 4.0)";

    /** As many ways as a usual screen holds, the last ones left out; all of them where everything is said in words. */
    @Override
    public StyledText text(Look look) {
        StyledText all = whole(look);
        boolean isTooTall = !look.plain() && all.lines().size() > SCREEN && ways.size() > FEWEST;
        return isTooTall ? new AfterAnswer(key, numeral, ways.subList(0, ways.size() - 1), classical).text(look) : all;
    }

    private StyledText whole(Look look) {
        Chord chord = numeral.in(key);
        StyledText.Builder text = StyledText.builder();
        String head = "After " + chord.write(Signs.MUSIC) + ", " + numeral.write(Signs.MUSIC) + " in "
                + key.write(Signs.MUSIC);
        text.line(named(StyledLine.of(head, Style.HEADING), look));
        for (Continuation way : ways) {
            (look.plain() ? sentences(way, look) : row(way, look)).forEach(text::line);
        }
        notes().forEach(note -> text.line(note, Style.QUIET));
        return text.build().in(look.signs().with(NoteNaming.ENGLISH)).wrapped(look.width());
    }

    /** The learner's names go into a line before it is wrapped, and into none that quotes authors. */
    private static StyledLine named(StyledLine line, Look look) {
        return StyledText.of(line).in(look.signs()).lines().get(0);
    }

    private List<StyledLine> row(Continuation way, Look look) {
        StyledLine names = StyledLine.of(pad(way.numeral().write(Signs.MUSIC), NUMERAL), Style.STRONG)
                .plus(pad(way.chord().write(Signs.MUSIC), SYMBOL), Style.STRONG);
        int hang = names.columns();
        List<StyledLine> lines =
                new ArrayList<>(Wrap.line(named(names.plus(capital(way.reason()) + "."), look), look.width(), hang));
        String facts = movement(way) + way.backed().map(this::counted).orElse("");
        StyledLine below = StyledLine.of(" ".repeat(hang)).plus(capital(facts) + ".", Style.QUIET);
        lines.addAll(Wrap.line(named(below, look), look.width()));
        return lines;
    }

    private List<StyledLine> sentences(Continuation way, Look look) {
        String said = way.numeral().write(Signs.MUSIC) + ", " + way.chord().write(Signs.MUSIC) + ": " + way.reason()
                + ". " + capital(movement(way))
                + way.backed().map(this::counted).orElse("") + ".";
        return Wrap.line(named(StyledLine.of(said), look), look.width());
    }

    /** {@code C stays, the rest moves two half steps in all}. */
    private static String movement(Continuation way) {
        List<String> held = way.move().held().stream().map(AfterAnswer::write).toList();
        int halfSteps = way.move().halfSteps();
        String stays = held.isEmpty() ? "nothing stays" : Words.listed(held) + (held.size() == 1 ? " stays" : " stay");
        return way.from() + " to " + way.to() + ", " + way.move().rootInWords() + ", " + stays + ", " + halfSteps
                + (halfSteps == 1 ? " half step" : " half steps");
    }

    private String counted(Backing backing) {
        String title = collections().size() == 1 ? "" : backing.collection().title() + " ";
        String times = "; " + title + backing.times() + " of " + backing.of();
        return backing.isFromFewSongs()
                ? times + ", but in only " + Words.number(backing.songs()) + (backing.songs() == 1 ? " song" : " songs")
                : times + " (" + backing.percent() + " %), in " + backing.songs() + " songs";
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("T, S, D: tonic, subdominant, dominant; half steps of all voices together.");
        for (SongCounts.Collection one : collections()) {
            notes.add("Counted in " + one.idiom() + ": " + one.title() + ", " + one.authors() + " (" + one.licence()
                    + ").");
        }
        if (!classical.isEmpty()) {
            List<String> rows = classical.stream()
                    .map(row -> row.to().write(Signs.MUSIC) + " " + row.times())
                    .toList();
            notes.add("Classical scores differ: " + String.join(", ", rows) + " of "
                    + classical.get(0).of() + " in " + SCORES + ".");
        }
        return notes;
    }

    private List<SongCounts.Collection> collections() {
        return SongCounts.collections(ways.stream()
                .map(Continuation::backed)
                .flatMap(Optional::stream)
                .toList());
    }

    private static String write(NoteName note) {
        return note.write(Signs.MUSIC);
    }

    private static String capital(String clause) {
        return clause.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + clause.substring(1);
    }

    private static String pad(String text, int columns) {
        int width = text.codePointCount(0, text.length());
        return text + " ".repeat(Math.max(1, columns - width));
    }

    @Override
    public void json(Json json) {
        json.put("key", key.toString())
                .put("numeral", numeral.toString())
                .put("symbol", numeral.in(key).toString())
                .objects("next", ways, AfterAnswer::json)
                .objects(
                        "classical",
                        classical,
                        (object, row) -> object.put("numeral", row.to().toString())
                                .put("corpus", "When in Rome")
                                .put("count", row.times())
                                .put("of", row.of()));
    }

    private static void json(Json object, Continuation way) {
        object.put("numeral", way.numeral().toString())
                .put("symbol", way.chord().toString())
                .put("reason", capital(way.reason()) + ". " + capital(movement(way)) + ".")
                .put("held", way.move().held())
                .put("moved", way.move().halfSteps());
        way.backed()
                .ifPresent(backing -> object.put(
                                "corpus",
                                backing.collection().title() + ", "
                                        + backing.collection().authors())
                        .put("count", backing.times())
                        .put("of", backing.of())
                        .put("songs", backing.songs()));
    }
}
