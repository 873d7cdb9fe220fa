package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What is said of files that cannot be read or written. */
class FailureTest {
    private static final UnaryOperator<String> AS_TYPED = path -> path.replace("/songs/", "");

    @Test
    @DisplayName("the reason is a phrase, with its file in front where it has one")
    void saysItsReason() {
        assertEquals(
                "holds no instrument",
                Failure.told(new Failure(Phrase.of("holds no instrument"))).toString());
        assertEquals(
                "waltz.sf2: holds no instrument",
                new Failure("waltz.sf2", Phrase.of("holds no instrument")).getMessage());
    }

    @Test
    @DisplayName("each file in it goes by the name that it is given")
    void namesFilesAsTheyWereTyped() {
        assertEquals(
                "waltz.wav: is a folder, not a file",
                Failure.told(new Failure("/songs/waltz.wav", Phrase.of("is a folder, not a file")), AS_TYPED)
                        .toString());
        assertEquals(
                "new/waltz.wav: there is no folder new",
                Failure.told(Failure.noFolder("/songs/new/waltz.wav", "/songs/new"), AS_TYPED)
                        .toString());
    }

    @Test
    @DisplayName("what others throw is told in their words")
    void tellsTheWordsOfOthers() {
        assertEquals(
                "No space left on device",
                Failure.told(new IOException("No space left on device")).toString());
        assertEquals("null", Failure.told(new IOException()).toString());
    }
}
