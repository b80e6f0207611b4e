package reseat.console.prompt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JsTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "f( | true",
                "f() | false",
                "f('(') | false",
                "[1, // ) | true",
                "let a = `x | true",
                "'x | false",
                "/* ( | true",
                "/**/ | false",
                "f(1)) | false"
            })
    void whatIsStillOpenIsSeenWithoutTheLanguage(String typed, boolean open) {
        assertEquals(open, JsText.isOpen(typed));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = true,
            value = {
                "let a = 1 | var a = 1",
                "const a = 1; let b | var   a = 1; var b",
                "for (let i of x) { let y } | for (let i of x) { let y }",
                "let {a, b} = x | var {a, b} = x",
                "say('let a = 1') | say('let a = 1')",
                "/* let */ let a | /* let */ var a",
                "{ let a = 1 } let b | { let a = 1 } var b",
                "letter = 1 | letter = 1",
                "x = let1 | x = let1"
            })
    void onlyTheOutermostDeclarationsChange(String typed, String run) {
        assertEquals(run, JsText.redeclaring(typed));
        assertEquals(typed.length(), JsText.redeclaring(typed).length());
    }
}
