package wrong.query;

public class KnowsReader {
    wrong.files.Reader known;
}
