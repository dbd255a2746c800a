// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Collections.Immutable;
global using System.Globalization;
global using System.Text;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Language.Units;
global using Byrelaw.Records.Animals;
global using Byrelaw.Records.Building;
global using Byrelaw.Records.Cells;
global using Byrelaw.Records.Csv;
global using Byrelaw.Records.Events;
global using Byrelaw.Records.Herds;
global using Byrelaw.Records.Problems;
global using Byrelaw.Records.Reading;
global using Byrelaw.Records.Spellings;
global using NodaTime;
