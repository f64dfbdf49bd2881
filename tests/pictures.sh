#!/usr/bin/env bash
# Remakes the pictures of the README from the real program with its demo shop.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

dotnet publish src/ShopFit.Web -c Release -nologo -v quiet -o artifacts/shop
dotnet run --project tests/ShopFit.Browser.Tests -c Release -- -noLogo -explicit only -class ShopFit.Browser.Pictures
pdftoppm -r 100 -png -singlefile tests/pictures/sheet.pdf tests/pictures/sheet
rm tests/pictures/sheet.pdf
