package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.Thorough;
import monochord.harmony.MusicText;
import monochord.lesson.LessonPart;
import monochord.lesson.TuneExcerpt;
import monochord.lesson.read.Library;
import monochord.score.Arrangement;
import monochord.score.Piece;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** What a lesson says to listen to, sounds in the first key or in the last; thoroughly all of it in both. */
class LessonSoundsTest {
    /** 60 dB below full scale, before it is brought to its level. */
    private static final float HEARD = 0.001f;

    private static List<String> music() {
        Library library = Library.in(Path.of("lessons"));
        List<String> music = new ArrayList<>();
        library.entries().stream()
                .flatMap(entry -> library.read(entry).lesson().orElseThrow().parts().stream())
                .forEach(part -> {
                    if (part instanceof LessonPart.Listen listen) {
                        music.add(listen.music());
                    } else if (part instanceof LessonPart.Compare compare) {
                        music.addAll(compare.music());
                    }
                });
        return music;
    }

    private static boolean isSilent(String line, Key key) throws IOException {
        return isSilent(Arrangement.piece(MusicText.read(line, key)), key);
    }

    private static boolean isSilent(Piece piece, Key key) throws IOException {
        Performance performance = Directions.USUAL.perform(piece, key);
        float[] sound = new float[JavaSound.RATE];
        try (Rendering rendering = Rendering.of(performance.sequence(), performance.bank())) {
            rendering.read(sound);
        }
        for (float sample : sound) {
            if (Math.abs(sample) > HEARD) {
                return false;
            }
        }
        return true;
    }

    @Test
    void whatIsToBeListenedToIsHeard() throws IOException {
        List<String> music = music();
        assertFalse(music.size() < 100, () -> "only " + music.size() + " pieces were found");
        List<Key> keys = Key.majorKeys();
        List<Key> ends = List.of(keys.get(0), keys.get(keys.size() - 1));
        List<String> silent = new ArrayList<>();
        for (String line : Thorough.spread(music, 40, 0)) {
            for (Key key : Thorough.spread(ends, 1, line.length())) {
                if (isSilent(line, key)) {
                    silent.add(line + " in " + key);
                }
            }
        }
        assertEquals(List.of(), silent);
    }

    /** The tunes of the lessons, over their chords. */
    @Test
    void everyTuneIsHeard() throws IOException {
        Library library = Library.in(Path.of("lessons"));
        List<TuneExcerpt> tunes = library.entries().stream()
                .flatMap(entry -> library.read(entry).lesson().orElseThrow().parts().stream())
                .filter(LessonPart.TunePart.class::isInstance)
                .map(part -> ((LessonPart.TunePart) part).tune())
                .toList();
        assertFalse(tunes.size() < 40, () -> "only " + tunes.size() + " tunes were found");
        for (TuneExcerpt written : Thorough.spread(tunes, 6, 0)) {
            TuneExcerpt tune = written.in(Key.parse("Gb"));
            assertFalse(isSilent(Piece.of(tune.melody(), tune.chords()), tune.key()), tune.title());
        }
    }
}
