global using System.Text;
