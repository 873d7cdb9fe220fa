package monochord.shell.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.song.BarLines;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongFault;
import monochord.song.SongHead;
import monochord.song.SongMetre;
import monochord.song.SongReader;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * As far as a new song has come, and what is asked next.
 *
 * @param sections those that are whole
 * @param current the section that is being asked for, or nothing
 * @param chords its lines so far
 * @param tune the same
 */
record NewSongText(
        SongHead head,
        List<Section> sections,
        String current,
        List<String> chords,
        List<String> tune,
        SongQuestion step) {
    private static final String FIRST = "Verse";
    private static final String OPEN = "...";
    private static final int FASTEST = 400;

    /** What is asked, and what an answer may look like. */
    enum SongQuestion {
        TITLE(Phrase.sentence("Any words; they stand at its head.")),
        KEY(Phrase.sentence(
                "A tonic is major, with {1} behind it minor: {0}.", Phrase.toType("D, Bb, F#m"), Phrase.typed("m"))),
        METRE(Phrase.sentence("Beats and their value: 4/4, 3/4 or 6/8.")),
        TEMPO(Phrase.sentence("A number from 1 to 400; in 6/8 dotted quarters are counted.")),
        SECTION(Phrase.sentence("Verse, Chorus, Bridge, or what the band calls it.")),
        CHORDS(Phrase.sentence(
                "Names, numerals or numbers; a dot holds, % repeats the bar before, |: and :| stand around a repeat.")),
        TUNE(Phrase.sentence(
                "Each note with its octave and its beats, r for a rest, as in {0}; bars as in the chords.",
                Phrase.toType("r:1 A3:1 | D4:2 E4:1 F#4:1"))),
        DONE(Phrase.NOTHING);

        private final Phrase hint;

        SongQuestion(Phrase hint) {
            this.hint = hint;
        }

        Phrase hint() {
            return hint;
        }
    }

    NewSongText {
        sections = List.copyOf(sections);
        chords = List.copyOf(chords);
        tune = List.copyOf(tune);
    }

    /** @param title what it is called if nothing is said */
    static NewSongText begun(String title) {
        SongHead head = new SongHead(title, "", Key.major(NoteName.C), SongMetre.COMMON, 0, "");
        return new NewSongText(head, List.of(), "", List.of(), List.of(), SongQuestion.TITLE);
    }

    /** One whose head stands already. */
    static NewSongText begun(SongHead head) {
        return new NewSongText(head, List.of(), "", List.of(), List.of(), SongQuestion.SECTION);
    }

    Phrase question() {
        return switch (step) {
            case TITLE -> Phrase.sentence("What is the song called?");
            case KEY -> Phrase.sentence("In which key?");
            case METRE -> Phrase.sentence("In which metre? Enter takes 4/4.");
            case TEMPO -> Phrase.sentence("How many beats a minute? Enter leaves that open.");
            case SECTION ->
                sections.isEmpty()
                        ? Phrase.sentence("What is its first section? Enter takes Verse.")
                        : Phrase.sentence(
                                "Which section comes next? One that stands already is played again; Enter says that is all.");
            case CHORDS ->
                chords.isEmpty()
                        ? Phrase.sentence(
                                "The chords of {0}, with bar lines, such as {1}?",
                                Phrase.typed(current), Phrase.toType("D | G . A . | D"))
                        : Phrase.sentence("The next line of its chords? Enter says that is all.");
            case TUNE ->
                tune.isEmpty()
                        ? Phrase.sentence(
                                "Its tune, such as {0}? Enter leaves it out.", Phrase.toType("A3:1 | D4:2 E4 F#4"))
                        : Phrase.sentence("The next line of the tune? Enter says that is all.");
            case DONE -> Phrase.NOTHING;
        };
    }

    /**
     * After an answer.
     *
     * @throws Unreadable if it is not what was asked for
     */
    NewSongText with(String answer) {
        return switch (step) {
            case TITLE -> with(head.called(SafeText.oneLine(answer)), SongQuestion.KEY);
            case KEY -> with(head.in(Key.parse(answer)), SongQuestion.METRE);
            case METRE ->
                with(
                        new SongHead(head.title(), head.by(), head.key(), SongMetre.parse(answer), 0, ""),
                        SongQuestion.TEMPO);
            case TEMPO ->
                with(
                        new SongHead(head.title(), head.by(), head.key(), head.metre(), tempo(answer), ""),
                        SongQuestion.SECTION);
            case SECTION -> section(SafeText.oneLine(answer));
            case CHORDS -> new NewSongText(head, sections, current, and(chords, answer), tune, SongQuestion.CHORDS);
            default -> new NewSongText(head, sections, current, chords, and(tune, answer), SongQuestion.TUNE);
        };
    }

    /** After Enter. */
    NewSongText without() {
        return switch (step) {
            case TITLE -> with(head, SongQuestion.KEY);
            case KEY -> with(head, SongQuestion.METRE);
            case METRE -> with(head, SongQuestion.TEMPO);
            case TEMPO -> with(head, SongQuestion.SECTION);
            case SECTION -> sections.isEmpty() && current.isEmpty() ? section(FIRST) : with(head, SongQuestion.DONE);
            case CHORDS -> with(head, SongQuestion.TUNE);
            default -> new NewSongText(head, open().all(), current, List.of(), List.of(), SongQuestion.SECTION);
        };
    }

    /** Where tune and chords differ in their bars, the shorter says that the rest is not written yet. */
    private NewSongText open() {
        if (song().faults().stream().noneMatch(NewSongText::isOfLength)) {
            return this;
        }
        boolean isShortTune =
                BarLines.read(tune, 1).size() <= BarLines.read(chords, 1).size();
        return isShortTune
                ? new NewSongText(head, sections, current, chords, opened(tune), step)
                : new NewSongText(head, sections, current, opened(chords), tune, step);
    }

    private static List<String> opened(List<String> lines) {
        List<String> all = new ArrayList<>(lines);
        String last = all.remove(all.size() - 1).replaceAll("[\\s|]+$", "");
        return and(all, last + " " + OPEN);
    }

    private NewSongText with(SongHead other, SongQuestion next) {
        return new NewSongText(other, sections, current, chords, tune, next);
    }

    private NewSongText section(String called) {
        if (called.equalsIgnoreCase(Song.CHANGES)) {
            throw Unreadable.because(called, 0, "a section", Clause.of("under that name changes are kept"), FIRST);
        }
        Optional<Section> again = sections.stream()
                .filter(section -> section.name().equalsIgnoreCase(called))
                .findFirst();
        return again.map(section -> new NewSongText(
                        head,
                        and(sections, new Section(section.name(), 0, List.of())),
                        current,
                        chords,
                        tune,
                        SongQuestion.SECTION))
                .orElseGet(() -> new NewSongText(head, sections, called, List.of(), List.of(), SongQuestion.CHORDS));
    }

    private static int tempo(String answer) {
        String digits = answer.strip();
        int tempo = digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 0;
        if (tempo < 1 || tempo > FASTEST) {
            throw Unreadable.because(answer, 0, "a tempo", "expected beats in a minute, 1 to 400", "84");
        }
        return tempo;
    }

    private static <T> List<T> and(List<T> some, T one) {
        List<T> all = new ArrayList<>(some);
        all.add(one);
        return all;
    }

    /** With the section that is being asked for, if anything of it is there. */
    private List<Section> all() {
        List<Section.Part> parts = new ArrayList<>();
        if (!chords.isEmpty()) {
            parts.add(new Section.ChordBlock(BarLines.read(chords, 1)));
        }
        if (!tune.isEmpty()) {
            parts.add(new Section.TuneBlock(BarLines.read(tune, 1)));
        }
        return parts.isEmpty() ? sections : and(sections, new Section(current, 0, parts));
    }

    /** All that was answered so far. */
    Song song() {
        List<Section> all = step == SongQuestion.CHORDS || step == SongQuestion.TUNE ? all() : sections;
        return SongReader.read(new Song(head, List.of(), all, List.of(), List.of(), List.of()).toString());
    }

    /** What is wrong in it that was not wrong before; that a tune is short is not, for more may come. */
    Optional<SongFault> newFault(NewSongText before) {
        if (before.step != SongQuestion.CHORDS && before.step != SongQuestion.TUNE) {
            return Optional.empty();
        }
        List<SongFault> known = before.song().faults();
        return song().faults().stream()
                .filter(fault -> !known.contains(fault) && !isOfLength(fault))
                .findFirst();
    }

    private static boolean isOfLength(SongFault fault) {
        return fault.instead().toString().endsWith(OPEN);
    }
}
