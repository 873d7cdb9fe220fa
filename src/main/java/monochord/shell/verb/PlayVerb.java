package monochord.shell.verb;

import java.util.List;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.score.Arrangement;
import monochord.shell.answer.Answer;
import monochord.shell.answer.PlayAnswer;
import monochord.shell.sitting.Sitting;
import monochord.sound.Patch;
import monochord.sound.Performance;
import monochord.theory.Key;
import monochord.theory.Unreadable;

/** Makes music heard, or writes it to a file. */
final class PlayVerb implements Verb {
    private static final String EXAMPLE = "play IV I V bVI V I in D at 84";

    @Override
    public Usage usage() {
        return Usage.of(
                        "play",
                        Usage.Topic.SOUND,
                        "play MUSIC [in KEY] [at BPM] [with PATCH] [--wav FILE] [--midi FILE]",
                        "play music, or write it to a file; alone, play the last again",
                        EXAMPLE,
                        "play F C G Ab with electric piano 1",
                        "play D harmonic minor --wav scale.wav")
                .withSmallWords("in", "at", "with")
                .withOptions("wav", "midi");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = Keys.of(sentence, sitting);
        if (sentence.body().isEmpty()) {
            return again(sentence, sitting);
        }
        Music music = sentence.body().read(text -> MusicText.read(text, key));
        Performance performance =
                asSaid(sentence, Performance.of(Arrangement.of(music)).in(key));
        sitting.stage().remember(performance, List.of(music));
        return sound(sentence, music, performance, sitting);
    }

    private static Answer again(Sentence sentence, Sitting sitting) {
        if (sitting.desk().isByEar()) {
            return HearVerb.again(sentence, sitting);
        }
        Music music = sitting.stage().lastMusic();
        if (music == null) {
            throw Unreadable.because(
                    sentence.whole(), 0, "something to play", "there is nothing to play again", EXAMPLE);
        }
        Performance last = sitting.stage().lastPerformance();
        Performance performance =
                last != null ? last : Performance.of(Arrangement.of(music)).in(sitting.key());
        return sound(sentence, music, asSaid(sentence, performance), sitting);
    }

    private static Answer sound(Sentence sentence, Music music, Performance performance, Sitting sitting) {
        return Recording.isWanted(sentence)
                ? Recording.write(sentence, performance, sitting)
                : new PlayAnswer(
                        List.of(music),
                        performance.tempo(),
                        sitting.stage().ear().play(performance));
    }

    private static Performance asSaid(Sentence sentence, Performance plain) {
        Performance performance = plain;
        if (sentence.clause("at").isPresent()) {
            performance = performance.at(sentence.clause("at").get().read(PlayVerb::tempo));
        }
        if (sentence.clause("with").isPresent()) {
            performance = performance.with(sentence.clause("with").get().read(Patch::parse));
        }
        return performance;
    }

    private static int tempo(String text) {
        String number = text.replaceAll(" *(bpm|BPM)$", "");
        int tempo = number.matches("[0-9]{1,3}") ? Integer.parseInt(number) : 0;
        if (tempo < Performance.SLOWEST || tempo > Performance.FASTEST) {
            throw Unreadable.because(
                    text,
                    0,
                    "a tempo",
                    "expected beats a minute from " + Performance.SLOWEST + " to " + Performance.FASTEST,
                    "at 84");
        }
        return tempo;
    }
}
