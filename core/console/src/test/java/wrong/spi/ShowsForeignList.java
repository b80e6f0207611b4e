package wrong.spi;

import java.util.List;

public class ShowsForeignList {
    protected void take(List<foreign.Tree[]> trees) {}
}
