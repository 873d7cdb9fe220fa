package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.key.KeyFinding;
import monochord.harmony.melody.Melody;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.song.musicxml.LeadSheet;
import monochord.song.musicxml.SheetFault;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.KeyAnswer;
import monochord.view.music.KeyFindingAnswer;

/** Shows a key and makes it the key of the sitting; or says which key music stands in. */
final class KeyVerb implements Verb {
    private static final String OF = "of";
    private static final String OVER = "over";
    private static final String IN = "in";

    @Override
    public String word() {
        return "key";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("show a key and stay in it; say where we are; find the key of music"))
                .form(
                        may(takes(Value.KEY)),
                        orAgain(),
                        fixed(OF),
                        takes(Value.MUSIC),
                        may(fixed(OVER), takes(Value.PROGRESSION)),
                        may(fixed(IN), takes(Value.KEY)),
                        orAgain(),
                        option(TuneAndChords.FILE, Value.LEADSHEET))
                .examples("key D", "key F# minor", "key of Am F C G", "key of E4 F4 G4:2 A4 G4 over C F");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sentence.has(TuneAndChords.FILE)) {
            return ofFile(sentence, sitting);
        }
        Sentence.SentencePart named = sentence.body();
        if (named.text().matches("(?i)of(\\s.*)?")) {
            String music = named.text().substring(OF.length());
            return new Sentence.SentencePart(music, named.place() + OF.length())
                    .read(text -> ofMusic(Sentence.parse(text, Set.of(OVER, IN), Set.of()), sitting));
        }
        if (!named.isEmpty()) {
            sitting.settle(named.read(Key::parse));
        }
        return new KeyAnswer(sitting.key());
    }

    private static Answer ofMusic(Sentence said, Sitting sitting) {
        Key key = SentenceKey.of(said, sitting);
        MusicHeard heard = said.body().read(text -> MusicHeard.read(text, key));
        Optional<Sentence.SentencePart> under = said.clause(OVER);
        if (under.isPresent() && heard.tune().isEmpty()) {
            said.body().read(KeyVerb::noTune);
        }
        Optional<Progression> over = under.map(part -> part.read(text -> Progression.parse(text, key)));
        return answer(heard.tune(), over.or(heard::chords), heard.remarks(), sitting);
    }

    private static String noTune(String text) {
        throw Unreadable.because(text, 0, "a melody", "a tune is expected before over", "key of E4 D4 C4:2 over C G C");
    }

    private static Answer ofFile(Sentence sentence, Sitting sitting) {
        try {
            LeadSheet sheet =
                    TuneAndChords.sheet(sentence.option(TuneAndChords.FILE).orElseThrow(), sitting);
            return answer(sheet.tune(), Optional.of(sheet.progression()), TuneAndChords.remarks(sheet), sitting);
        } catch (SheetFault fault) {
            return Statement.failed(fault.phrase());
        }
    }

    private static Answer answer(
            Optional<Melody> tune, Optional<Progression> chords, List<Phrase> remarks, Sitting sitting) {
        KeyFinding finding = KeyFinding.of(tune, chords, Counts.KEYS);
        Optional<Progression> inKey = chords.map(row -> new Progression(finding.key(), row.bars(), row.barred()));
        sitting.stage()
                .remember(tune.map(notes -> Playable.of(notes, inKey, finding.key()))
                        .orElseGet(() -> Playable.of(new Music.OneProgression(inKey.orElseThrow()), finding.key())));
        return new KeyFindingAnswer(finding, chords, remarks);
    }
}
