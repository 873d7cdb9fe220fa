package monochord.view.music;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import monochord.harmony.Progression;
import monochord.song.Section;
import monochord.song.SectionMusic;
import monochord.song.Song;
import monochord.song.SongChange;
import monochord.song.SongHead;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Notated;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;

/** A song: its form, its bars with numerals below, its words, what was changed in it, and what could not be read. */
public record SongAnswer(Song song) implements Answer {
    private static final int INDENT = 2;
    private static final int MOST_FAULTS = 8;

    /** Something that was done with a song. */
    public record SongStatement(List<Phrase> said, Song song) implements Answer {
        public static SongStatement of(Song song, Phrase... said) {
            return new SongStatement(
                    Stream.of(said).filter(line -> !line.isEmpty()).toList(), song);
        }

        @Override
        public StyledText text(Look look) {
            StyledText.Builder text = StyledText.builder(look.reader());
            said.forEach(text::line);
            return text.build().wrapped(look.width());
        }

        @Override
        public void json(Json json) {
            json.put("kind", "change")
                    .put(
                            "message",
                            String.join(
                                    "\n", said.stream().map(Phrase::toString).toList()));
            SongFields.changes(song, json);
        }
    }

    @Override
    public StyledText text(Look look) {
        Map<Section, SectionMusic> known = new IdentityHashMap<>();
        StyledText text = head(look, known);
        for (Section section : song.sections()) {
            text = text.plus(section(section, look, known));
        }
        return text.plus(end(look));
    }

    private StyledText head(Look look, Map<Section, SectionMusic> known) {
        SongHead head = song.head();
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(
                head.by().isEmpty()
                        ? Phrase.typed(head.title())
                        : Phrase.of("{0} ({1})", Phrase.typed(head.title()), Phrase.typed(head.by())),
                Style.HEADING);
        Phrase metre = Phrase.typed(head.metre().toString());
        text.line(
                head.tempo() == 0
                        ? Phrase.of("{0}, {1}", head.key(), metre)
                        : Phrase.of("{0}, {1}, {2} to the minute", head.key(), metre, head.tempo()));
        text.line(Phrase.of(
                "Form: {0}",
                Phrase.joined(
                        " – ",
                        song.sections().stream()
                                .map(section -> inForm(section, music(section, known)))
                                .toList())));
        song.remarks().forEach(remark -> text.line(remark, Style.QUIET));
        return text.build().wrapped(look.width());
    }

    /** Each section that is written out is read once. */
    private SectionMusic music(Section section, Map<Section, SectionMusic> known) {
        return known.computeIfAbsent(song.written(section), its -> SectionMusic.of(its, song.head()));
    }

    private static Phrase inForm(Section section, SectionMusic music) {
        int bars = music.inOrder().size();
        return Phrase.counted(bars, "{0} ({1} bar)", "{0} ({1} bars)", Phrase.typed(section.name()), bars);
    }

    private StyledText section(Section section, Look look, Map<Section, SectionMusic> known) {
        StyledText.Builder heading = StyledText.builder(look.reader());
        heading.gap().line(Phrase.typed(section.name()), Style.HEADING);
        if (section.isAgain()) {
            heading.line(Phrase.sentence("As before."), Style.QUIET);
        }
        StyledText text = heading.build().wrapped(look.width());
        if (section.isAgain()) {
            return text;
        }
        SectionMusic music = music(section, known);
        Optional<Progression> chords = music.progression(0, music.count());
        if (chords.isPresent() && !section.chords().isEmpty()) {
            text = text.plus(chords(chords.get(), look));
        }
        return text.plus(below(section, music, look));
    }

    private static StyledText chords(Progression progression, Look look) {
        if (look.plain()) {
            return StyledText.builder(look.reader())
                    .line(Phrase.of("Chords: {0}", Phrase.row(progression.symbols())))
                    .line(Phrase.of("Numerals: {0}", Phrase.row(progression.numerals())))
                    .build()
                    .wrapped(look.width());
        }
        List<Notated> symbols = progression.symbols();
        Table table = Table.of(symbols.size()).indentedBy(INDENT);
        table.row(symbols.stream()
                .map(symbol -> Phrase.of("{0}", symbol).styled(Style.STRONG))
                .toList());
        table.row(progression.numerals().stream()
                .map(numeral -> Phrase.of("{0}", numeral))
                .toList());
        return table.inBlocks(look, 0);
    }

    private StyledText below(Section section, SectionMusic music, Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        pickup(music).ifPresent(chords -> text.line(Phrase.of("In the pick-up: {0}", Phrase.row(chords)), Style.QUIET));
        boolean repeats = music.order().size() != music.bars().size();
        if (repeats) {
            text.line(
                    Phrase.of(
                            "With its repeats {0} bars are played: {1}",
                            music.inOrder().size(), Phrase.typed(numbers(music.inOrder()))),
                    Style.QUIET);
        }
        music.melody(0, music.count(), song.head().metre())
                .ifPresent(tune -> text.line(Phrase.of(
                        "Tune: {0}",
                        Phrase.row(
                                tune.notes().stream().map(note -> note.pitch()).toList()))));
        section.words().stream().map(SongAnswer::sung).forEach(line -> text.line(Phrase.typed(line)));
        return text.build().wrapped(look.width());
    }

    /** The chords before the first full bar, if there are some. */
    private static Optional<List<Notated>> pickup(SectionMusic music) {
        List<Notated> chords = music.bars().stream()
                .limit(music.pickup())
                .flatMap(bar -> bar.chords().stream())
                .map(struck -> (Notated) struck.chord())
                .toList();
        return chords.isEmpty() ? Optional.empty() : Optional.of(chords);
    }

    /** {@code 1–4, 1–3, 5}: bars in playing order. */
    private static String numbers(List<Integer> order) {
        List<String> runs = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= order.size(); i++) {
            if (i == order.size() || order.get(i) != order.get(i - 1) + 1) {
                int first = order.get(from) + 1;
                int last = order.get(i - 1) + 1;
                runs.add(first == last ? String.valueOf(first) : first + "–" + last);
                from = i;
            }
        }
        return String.join(", ", runs);
    }

    private void changes(Phrase heading, Predicate<SongChange> wanted, StyledText.Builder text) {
        List<SongChange> some = song.changes().stream().filter(wanted).toList();
        if (!some.isEmpty()) {
            text.gap().line(heading, Style.HEADING);
            some.forEach(change -> text.line(Phrase.typed(change.toString())));
        }
    }

    private StyledText end(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        changes(Phrase.of("Changed, to be agreed with the band:"), change -> !change.isAgreed(), text);
        changes(Phrase.of("Changed, and agreed with the band:"), SongChange::isAgreed, text);
        if (!song.faults().isEmpty()) {
            text.gap().line(Phrase.of("Not read:"), Style.HEADING);
            song.faults().stream().limit(MOST_FAULTS).forEach(fault -> text.line(fault.phrase(), Style.WRONG));
            int more = song.faults().size() - MOST_FAULTS;
            if (more > 0) {
                text.line(Phrase.counted(more, "And {0} more.", "And {0} more.", more));
            }
        }
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        SongFields.put(song, json);
    }

    /** Without the signs for notes that are held or skipped. */
    static String sung(String line) {
        return line.replaceAll("-\\s*\\|\\s*", "")
                .replaceAll("-{2,}", "-")
                .replaceAll("[_*|]", " ")
                .replace('~', ' ')
                .replace("\\\\-", "-")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
