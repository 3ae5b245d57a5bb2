BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'

    # Width and height stand in the first chunk of a PNG, big end first (ISO/IEC 15948).
    function Get-PngSize([string] $Path) {
        $bytes = [IO.File]::ReadAllBytes($Path)
        [Text.Encoding]::ASCII.GetString($bytes, 1, 3) | Should -Be 'PNG'
        foreach ($offset in 16, 20) { [BitConverter]::ToInt32($bytes[($offset + 3)..$offset], 0) }
    }
}

Describe 'Export-LayerSheet' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'writes a picture' {
        $out = $file | Export-LayerSheet sheet.png -CellSize 100
        $out | Should -BeOfType IO.FileInfo
        $out.FullName | Should -Be (Join-Path $folder 'sheet.png')
        $width, $height = Get-PngSize $out.FullName
        $width | Should -BeGreaterThan 100
        $height | Should -BeGreaterThan 100
    }

    It 'takes columns, a background and chosen layers' {
        $one, $null = Get-PngSize ($file | Get-Layer -Leaf | Export-LayerSheet one.png -CellSize 100 -Columns 1)
        $four, $null = Get-PngSize ($file | Export-LayerSheet four.png -CellSize 100 -Columns 4 -Kind Pixel -Background '#204060')
        $four | Should -BeGreaterThan $one
        (Get-Streams { $file | Export-LayerSheet words.png -Name Body -Verbose }).Verbose -like '*1 part on 1 page' | Should -HaveCount 1
    }

    It 'writes a sheet for each file to a folder' {
        $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'other.psd'))
        ($file, $other | Export-LayerSheet sheets -CellSize 80).Name | Should -Be 'hero.png', 'other.png'
    }

    It 'has one error and no picture for a file that is gone or has changed, with <Change>' -ForEach @(
        @{ Change = { Remove-Item hero.psd }; Expected = '*does not exist*' }
        @{ Change = { [IO.File]::AppendAllText("$pwd/hero.psd", 'x') }; Expected = '*changed on disk*' }
    ) {
        & $Change
        $result = Get-Streams { $file | Export-LayerSheet sheet.png -CellSize 80 }
        $result.Errors | Should -HaveCount 1
        $result.Errors[0] | Should -BeLike $Expected
        $result.Warnings | Should -BeNullOrEmpty
        Test-Path sheet.png | Should -BeFalse
    }

    It 'refuses a second file for one picture, and existing pictures without -Force' {
        $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'other.psd'))
        $result = Get-Streams { $file, $other | Export-LayerSheet sheet.png -CellSize 80 }
        $result.Output.Count | Should -Be 1
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'DestinationTaken,*'
        (Get-Streams { $file | Export-LayerSheet sheet.png -CellSize 80 }).Errors.Count | Should -Be 1
        ($file | Export-LayerSheet sheet.png -CellSize 80 -Force).Name | Should -Be 'sheet.png'
    }

    It 'refuses what is no background or no size' {
        { $file | Export-LayerSheet sheet.png -Background plaid } | Should -Throw '*plaid*'
        { $file | Export-LayerSheet sheet.png -CellSize 10 } | Should -Throw
    }

    It 'writes nothing with -WhatIf' {
        $file | Export-LayerSheet sheet.png -WhatIf | Should -BeNullOrEmpty
        Test-Path sheet.png | Should -BeFalse
    }
}
