package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.paper.StaffFile;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.music.MusicAnswer;
import monochord.view.staff.MusicOnStaff;

/** Spells music and draws it on a keyboard, or on a staff for a file. */
final class ShowVerb implements Verb {
    private static final String ON_A_STAFF = "show F C G Ab in C staff --svg loop.svg";

    @Override
    public String word() {
        return "show";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.EXPLORING, Phrase.of("spell it and draw it on a keyboard"))
                .form(
                        takes(Value.CHORD, Value.SCALE, Value.NOTES, Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        StaffFile.form())
                .examples("show Abmaj7", "show E harmonic minor", "show IV I V bVI V I in D", ON_A_STAFF);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Music music = sentence.body().read(text -> MusicText.read(text, key));
        sitting.stage().remember(music);
        return StaffFile.asked(sentence, sitting, () -> MusicOnStaff.of(music, key), ON_A_STAFF)
                .orElseGet(() -> MusicAnswer.of(music, key));
    }
}
