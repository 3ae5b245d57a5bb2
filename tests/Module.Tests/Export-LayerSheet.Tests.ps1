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

    It 'writes <Name> by its extension' -ForEach @(
        @{ Name = 'sheet.jpg'; Start = 0xFF, 0xD8, 0xFF }
        @{ Name = 'sheet.webp'; Start = 0x52, 0x49, 0x46, 0x46 }
        @{ Name = 'sheet.pdf'; Start = 0x25, 0x50, 0x44, 0x46 }
        @{ Name = 'sheet.html'; Start = 0x3C, 0x21, 0x44, 0x4F }
    ) {
        $out = $file | Export-LayerSheet $Name
        $out.Name | Should -Be $Name
        [IO.File]::ReadAllBytes($out.FullName)[0..($Start.Count - 1)] | Should -Be $Start
    }

    It 'refuses other formats, and names the possible ones' {
        (Get-Streams { $file | Export-LayerSheet sheet.bmp }).Errors[0] | Should -BeLike '*.png, .jpg, .webp, .pdf or .html*'
    }

    It 'takes <Size> pages' -ForEach @(
        @{ Size = 'A4'; Turned = $false; Expected = 1588, 2246 }
        @{ Size = 'A4'; Turned = $true; Expected = 2246, 1588 }
        @{ Size = 'Screen'; Turned = $true; Expected = 1920, 1080 }
        @{ Size = '900x1200'; Turned = $false; Expected = 900, 1200 }
    ) {
        Get-PngSize ($file | Export-LayerSheet page.png -PageSize $Size -Landscape:$Turned -Margin 10) | Should -Be $Expected
    }

    It 'shows groups, arrangements, views and scales' {
        $group, $null = Get-PngSize ($file | Export-LayerSheet groups.png -Of Group -CellSize 200)
        $group | Should -BeGreaterThan 200
        foreach ($arrangement in 'Stack', 'Pairs', 'Status', 'Size') { $file | Export-LayerSheet "$arrangement.png" -Arrange $arrangement -CellSize 80 | Should -HaveCount 1 }
        $alone, $null = Get-PngSize ($file | Export-LayerSheet alone.png -View Alone -Columns 3 -CellSize 250)
        $both, $null = Get-PngSize ($file | Export-LayerSheet both.png -View Both -Columns 3 -CellSize 250 -Scale Common -Enlarge)
        $both | Should -BeGreaterThan ($alone + 700)
        ($file | Export-LayerSheet place.png -View InPlace).Length | Should -BeGreaterThan 0
    }

    It 'shows all files that come in, in one overview' {
        $other = Get-LayerFile (Copy-Fixture ag-plain (Join-Path $folder 'other.psd'))
        $result = Get-Streams { $file, $other | Export-LayerSheet all.html -Of File -Title 'Incoming, {Counts}' -Verbose }
        $result.Output.Name | Should -Be 'all.html'
        $result.Verbose -like '*2 files on 1 page' | Should -HaveCount 1
        Get-Content all.html -Raw | Should -BeLike '*<h1 dir="auto">Incoming, 2 files*hero.psd*other.psd*'
        ($other | Get-Layer | Export-LayerSheet overviews -Of File).FullName | Should -Be (Join-Path $folder 'overviews/overview.png')
    }

    It 'refuses what makes no sense before anything is read: <Why>' -ForEach @(
        @{ Why = 'a size that is none'; More = @{ PageSize = 'A9' }; Expected = '*A4, A3*' }
        @{ Why = 'a whole file in place'; More = @{ Of = 'File'; View = 'InPlace' }; Expected = '*no place*' }
    ) {
        { $file | Export-LayerSheet sheet.png @More } | Should -Throw $Expected
    }

    It 'refuses a field that a title does not have' {
        (Get-Streams { $file | Export-LayerSheet sheet.png -Title '{Owner}' }).Errors[0] | Should -BeLike '*{File}, {Date}*'
    }
}
