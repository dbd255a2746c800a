// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using BenchmarkDotNet.Attributes;
global using Byrelaw.Judging;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Language.Sources;
global using Byrelaw.Records.Herds;
global using Byrelaw.Records.Reading;
