// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Globalization;
global using System.Text.Json;
global using Byrelaw.Cli.Files;
global using Byrelaw.Loading;
global using Byrelaw.Testing;
global using Byrelaw.Testing.Documents;
global using Byrelaw.Testing.Problems;
global using Byrelaw.Testing.RandomCases;
