package org.rafterbook.ui.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TokensTest {

    private static final List<Token> GROUNDS = List.of(Token.DESK, Token.SHEET, Token.WELL, Token.RAISED, Token.SOFT);

    @ParameterizedTest
    @EnumSource
    void everyThemeNamesEveryColour(Theme theme) {
        assertThat(Token.values())
                .allSatisfy(token -> assertThat(theme.tokens().of(token)).isNotNull());
    }

    @ParameterizedTest
    @EnumSource
    void textReadsOnEveryGround(Theme theme) {
        List<Token> inks =
                List.of(Token.INK, Token.INK_2, Token.INK_3, Token.ACCENT, Token.GOOD, Token.CAUTION, Token.STOP);
        for (Token ink : inks) {
            for (Token ground : GROUNDS) {
                boolean exception = theme == Theme.DIM && ink == Token.INK_3 && ground == Token.SOFT;
                if (!exception) {
                    assertThat(contrast(theme, ink, ground))
                            .as("%s on %s", ink, ground)
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
        }
        assertThat(contrast(theme, Token.ON, Token.ACCENT)).isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest
    @EnumSource
    void edgesAndMarksCanBeSeen(Theme theme) {
        for (Token ground : List.of(Token.DESK, Token.SHEET, Token.WELL, Token.RAISED)) {
            assertThat(contrast(theme, Token.EDGE, ground))
                    .as("edge on %s", ground)
                    .isGreaterThanOrEqualTo(3);
        }
        for (int i = 0; i < 6; i++) {
            assertThat(contrast(theme, Token.chart(i), Token.SHEET))
                    .as("chart %s", i)
                    .isGreaterThanOrEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource(names = "DIM")
    void theDimThemeHasHardlyAnyBlue(Theme theme) {
        assertThat(Token.values())
                .allSatisfy(
                        token -> assertThat(theme.tokens().of(token).getBlue()).isLessThan(0x50 / 255.0));
    }

    /** Contrast ratio of WCAG 2.2, "contrast ratio" and "relative luminance" (exact formula of the standard). */
    private static double contrast(Theme theme, Token a, Token b) {
        double first = luminance(theme.tokens().of(a));
        double second = luminance(theme.tokens().of(b));
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }
}
