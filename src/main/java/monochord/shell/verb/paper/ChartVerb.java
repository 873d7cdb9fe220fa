package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.alone;
import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import monochord.harmony.Progression;
import monochord.paper.Chart;
import monochord.paper.ChartPage;
import monochord.paper.ChartSheet;
import monochord.paper.ChartSong;
import monochord.paper.ChartXml;
import monochord.paper.LeadSheetPages;
import monochord.paper.PackedXml;
import monochord.paper.PlayerPart;
import monochord.paper.page.Page;
import monochord.paper.page.PageSize;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Writes the parts of a progression for the players of a band. */
final class ChartVerb implements Verb {
    private static final String EXAMPLE = "chart F | C | Ab | F in C for trumpet, alto sax --musicxml loop.musicxml";
    private static final String FOR = "for";
    private static final String NUMERALS = "numerals";
    private static final String NUMBERS = "numbers";
    private static final String TUNE = "tune";
    private static final String MUSICXML = "musicxml";
    private static final int MOST_PARTS = 20;

    @Override
    public String word() {
        return "chart";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("write the chords down for each player, as a page or for notation programs"))
                .form(
                        may(takes(Value.PROGRESSION)),
                        may(clause("in", Value.KEY)),
                        may(clause(FOR, Value.INSTRUMENT)),
                        may(oneOf(NUMERALS, NUMBERS)),
                        may(alone(TUNE)))
                .form(PaperFiles.form())
                .form(may(option(MUSICXML, Value.OUT)))
                .examples(EXAMPLE, "chart Dm7 G7 | C in C for concert, alto sax --html cadence.html");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.has(MUSICXML) && !PaperFiles.isWanted(sentence)) {
            throw Unreadable.because(
                    sentence.whole(), sentence.whole().length(), "a chart", "it has to be said where it goes", EXAMPLE);
        }
        Chart chart = chart(sentence, sitting);
        List<PlayerPart> parts = parts(sentence, chart);
        boolean isSong = sentence.body().isEmpty();
        ChartSheet.ChartLook look = new ChartSheet.ChartLook(
                !isSong && sentence.clause(NUMBERS).isEmpty()
                        || sentence.clause(NUMERALS).isPresent(),
                sentence.clause(NUMBERS).isPresent());
        Reader reader = PaperFiles.reader(sitting);
        Phrase title = PlayerPart.concert(chart).title();
        BiFunction<PlayerPart, PageSize, List<Page>> pages =
                sentence.clause(TUNE).isPresent()
                        ? (part, size) -> LeadSheetPages.of(song(sentence, sitting), part, size, reader)
                        : (part, size) -> ChartSheet.of(part, look, size, reader);
        PaperFiles files = new PaperFiles(sentence, sitting);
        files.page(() -> ChartPage.of(title, parts, look, reader))
                .pages(
                        title,
                        size -> parts.stream()
                                .flatMap(part -> pages.apply(part, size).stream())
                                .toList());
        if (parts.size() > 1) {
            parts.forEach(part -> files.besides(part.name(), size -> pages.apply(part, size)));
        }
        sentence.option(MUSICXML).ifPresent(named -> files.with(scores(named, parts, sitting)));
        return NewFile.write(files.files(), sentence, sitting, new ChartWritten(files.names(), parts));
    }

    /** That of a progression, or of the song that is open. */
    private static Chart chart(Sentence sentence, Sitting sitting) {
        if (!sentence.body().isEmpty()) {
            Key key = SentenceKey.of(sentence, sitting);
            return Chart.of(sentence.body().read(text -> Progression.parse(text, key)));
        }
        Chart chart = ChartSong.of(song(sentence, sitting));
        if (chart.bars().isEmpty()) {
            throw Unreadable.because(sentence.whole(), 0, "a chart", "the open song has no chords yet", EXAMPLE);
        }
        return chart;
    }

    private static Song song(Sentence sentence, Sitting sitting) {
        return sitting.song()
                .song()
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(), 0, "a chart", "no song is open and no chords are named", EXAMPLE));
    }

    private static List<PlayerPart> parts(Sentence sentence, Chart chart) {
        Optional<Sentence.SentencePart> players = sentence.clause(FOR);
        if (players.isEmpty()) {
            return List.of(PlayerPart.concert(chart));
        }
        return players.get().read(text -> parts(text, chart));
    }

    private static List<PlayerPart> parts(String text, Chart chart) {
        List<PlayerPart> parts = new ArrayList<>();
        int place = 0;
        for (String name : text.split("(?=,)")) {
            String bare = name.replaceFirst("^,\\s*", "");
            int start = place + name.length() - bare.length();
            try {
                parts.add(PlayerPart.of(chart, bare));
            } catch (Unreadable unreadable) {
                throw unreadable.within(text, start);
            }
            place += name.length();
        }
        if (parts.size() > MOST_PARTS) {
            throw Unreadable.because(
                    text, 0, "players", Clause.of("{0} parts at most are written at once", MOST_PARTS), EXAMPLE);
        }
        return parts;
    }

    /** One part into the file that is named; of several each into one with the player's name behind it. */
    private static List<NewFile> scores(Sentence.SentencePart named, List<PlayerPart> parts, Sitting sitting) {
        List<NewFile> files = new ArrayList<>();
        for (PlayerPart part : parts) {
            String name = parts.size() == 1 ? named.text() : NewFile.behind(named.text(), part.name());
            String score = ChartXml.of(part, part.title().toString());
            files.add(NewFile.named(named, name, sitting, file -> PackedXml.write(file, name, score)));
        }
        return files;
    }
}
