package monochord.harmony;

/** The three ways to write a chord, told apart by the first sign that is no accidental. */
enum ChordWriting {
    /** {@code bVI}, {@code viio7/V}, {@code N6}. */
    NUMERAL,
    /** {@code b6}, {@code 2-7}. */
    NUMBER,
    /** {@code Ab}, {@code Am7}; whatever is none of the others is taken for one. */
    SYMBOL;

    private static final String ACCIDENTALS = "b#x\u266d\u266f";

    static ChordWriting of(String word) {
        if (isNamed(word)) {
            return NUMERAL;
        }
        int first = 0;
        while (first < word.length() && ACCIDENTALS.indexOf(word.charAt(first)) >= 0) {
            first++;
        }
        char sign = first < word.length() ? word.charAt(first) : 0;
        return sign >= '0' && sign <= '9' ? NUMBER : "IViv".indexOf(sign) >= 0 ? NUMERAL : SYMBOL;
    }

    /** Chords with a name of their own; {@code Cadd9} is none of them. */
    private static boolean isNamed(String word) {
        return word.startsWith("N")
                || word.startsWith("It")
                || word.startsWith("Fr")
                || word.startsWith("Ger")
                || word.startsWith("Cad") && !word.startsWith("Cadd");
    }
}
