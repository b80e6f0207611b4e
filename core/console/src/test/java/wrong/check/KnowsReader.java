package wrong.check;

public class KnowsReader {
    wrong.files.Reader known;
}
