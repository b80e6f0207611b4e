package penhallow.sounders;

import java.util.List;
import reseat.check.Check;
import reseat.spi.Command;
import reseat.files.FamilyPlugin;
import reseat.stock.StockSource;

/** What we add to Reseat: the family in META-INF/reseat-family, a check, a stock and a command. */
public final class SoundersPlugin extends FamilyPlugin {

    @Override
    public List<Check> checks() {
        return List.of(new RingCheck());
    }

    @Override
    public List<StockSource> stockSources() {
        return List.of(new ShelfList());
    }

    @Override
    public List<Command> commands() {
        return List.of(new RingsCommand());
    }
}
