package monochord.song;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: the ABC standard 2.1 (December 2011), sections 4.8 and 4.9, worked out by hand. */
class PlayingOrderTest {
    @ParameterizedTest(name = "{0} is played {1}")
    @CsvSource(delimiter = ';', textBlock = """
            A | B | C                        ; A B C
            A | B :|                         ; A B A B
            |: A | B :| C                    ; A B A B C
            A |: B :| C                      ; A B B C
            A | B :| C | D :|                ; A B A B C D C D
            A || B :| C                      ; A B B C
            |: A ::| B                       ; A A A B
            |: A :: B :|                     ; A A B B
            |: A | [1 B :| [2 C |]           ; A B A C
            A | [1 B :| [2 C || D | E :|     ; A B A C D E D E
            |: A | [1 B :| [2 C :|: D :|     ; A B A C D D
            |: A [1,2 B :| [3 C ||           ; A B A B A C
            |: A [1-2 B :| [3 C || D         ; A B A B A C D
            |: A | [1 B | C :| [2 D | E || F ; A B C A D E F
            |: A [1 B :| [2 C :| [3 D |]     ; A B A C A D
            """)
    void repeatsAndEndingsArePlayedInTheirTurn(String written, String played) {
        List<WrittenBar> bars = BarLines.read(List.of(written), 1);
        assertEquals(
                played,
                PlayingOrder.of(bars).stream()
                        .map(index -> bars.get(index).text())
                        .collect(Collectors.joining(" ")));
        String again = String.join("\n", BarLines.write(bars));
        assertEquals(PlayingOrder.of(bars), PlayingOrder.of(BarLines.read(List.of(again.split("\n")), 1)), () -> again);
    }
}
