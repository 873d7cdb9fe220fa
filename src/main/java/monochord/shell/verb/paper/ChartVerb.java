package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.harmony.Progression;
import monochord.paper.ChartPage;
import monochord.paper.ChartXml;
import monochord.paper.PackedXml;
import monochord.paper.PlayerPart;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Writes the parts of a progression for the players of a band. */
final class ChartVerb implements Verb {
    private static final String EXAMPLE = "chart F | C | Ab | F in C for trumpet, alto sax --musicxml loop.musicxml";
    private static final String FOR = "for";
    private static final String HTML = "html";
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
                        takes(Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(clause(FOR, Value.INSTRUMENT)),
                        may(option(HTML, Value.OUT)),
                        may(option(MUSICXML, Value.OUT)),
                        may(option(NewFile.OVER)))
                .examples(EXAMPLE, "chart Dm7 G7 | C in C for concert, alto sax --html cadence.html");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Progression progression = sentence.body().read(text -> Progression.parse(text, key));
        List<PlayerPart> parts = parts(sentence, progression);
        if (!sentence.has(MUSICXML) && !sentence.has(HTML)) {
            throw Unreadable.because(
                    sentence.whole(), sentence.whole().length(), "a chart", "it has to be said where it goes", EXAMPLE);
        }
        List<NewFile> files = new ArrayList<>();
        Reader reader = Reader.of(Signs.MUSIC.with(sitting.naming()));
        Phrase title = Phrase.of("Chart in {0}", PlayerPart.concert(progression).key());
        NewFile.text(sentence, HTML, sitting, () -> ChartPage.of(title, parts, reader))
                .ifPresent(files::add);
        sentence.option(MUSICXML).ifPresent(named -> files.addAll(scores(named, parts, sitting)));
        return NewFile.write(
                files,
                sentence,
                sitting,
                new ChartWritten(files.stream().map(NewFile::name).toList(), parts));
    }

    private static List<PlayerPart> parts(Sentence sentence, Progression progression) {
        Optional<Sentence.SentencePart> players = sentence.clause(FOR);
        if (players.isEmpty()) {
            return List.of(PlayerPart.concert(progression));
        }
        return players.get().read(text -> parts(text, progression));
    }

    private static List<PlayerPart> parts(String text, Progression progression) {
        List<PlayerPart> parts = new ArrayList<>();
        int place = 0;
        for (String name : text.split("(?=,)")) {
            String bare = name.replaceFirst("^,\\s*", "");
            int start = place + name.length() - bare.length();
            try {
                parts.add(PlayerPart.of(progression, bare));
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
            String name = parts.size() == 1 ? named.text() : named(named.text(), part.name());
            String score =
                    ChartXml.of(part, Phrase.of("Chart in {0}", part.key()).toString());
            files.add(new NewFile(
                    name,
                    named.read(text -> sitting.outside().file(text.isEmpty() ? text : name)),
                    file -> PackedXml.write(file, name, score)));
        }
        return files;
    }

    /** {@code loop.musicxml} for an alto sax: {@code loop-alto-sax.musicxml}. */
    private static String named(String file, String player) {
        int end = file.lastIndexOf('.') > file.lastIndexOf('/') ? file.lastIndexOf('.') : file.length();
        return file.substring(0, end) + "-" + player.toLowerCase(Locale.ROOT).replace(' ', '-') + file.substring(end);
    }
}
