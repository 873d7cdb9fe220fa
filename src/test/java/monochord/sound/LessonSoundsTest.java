package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.harmony.MusicText;
import monochord.lesson.Part;
import monochord.lesson.read.Library;
import monochord.score.Arrangement;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** Every lesson that says listen, sounds: in the first key and in the last. */
class LessonSoundsTest {
    /** 60 dB below full scale, before it is brought to its level. */
    private static final float HEARD = 0.001f;

    private static List<String> music() {
        Library library = Library.in(Path.of("lessons"));
        List<String> music = new ArrayList<>();
        library.entries().stream()
                .flatMap(entry -> library.read(entry).lesson().orElseThrow().parts().stream())
                .forEach(part -> {
                    if (part instanceof Part.Listen listen) {
                        music.add(listen.music());
                    } else if (part instanceof Part.Compare compare) {
                        music.addAll(compare.music());
                    }
                });
        return music;
    }

    private static boolean isSilent(String line, Key key) throws IOException {
        Performance performance = Directions.USUAL.perform(Arrangement.piece(MusicText.read(line, key)), key);
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
        List<String> silent = new ArrayList<>();
        for (String line : music) {
            if (isSilent(line, keys.get(0)) || isSilent(line, keys.get(keys.size() - 1))) {
                silent.add(line);
            }
        }
        assertEquals(List.of(), silent);
    }
}
