package wrong.stock;

public class KnowsReader {
    wrong.files.Reader known;
}
